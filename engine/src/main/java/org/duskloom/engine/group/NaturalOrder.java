package org.duskloom.engine.group;

import java.util.Comparator;

/**
 * Names as people count: {@code daisy-2} before {@code daisy-10}. Runs of the digits 0 to 9 are compared as numbers of
 * any length, everything else by UTF-16 unit. Names that only differ in leading zeros are compared as plain text, so
 * no two different names are equal.
 */
public final class NaturalOrder implements Comparator<String> {
    /** The order. */
    public static final NaturalOrder INSTANCE = new NaturalOrder();

    private NaturalOrder() {}

    @Override
    public int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endA = endOfDigits(a, i);
            int endB = endOfDigits(b, j);
            boolean numbers = endA > i && endB > j;
            int step = numbers
                    ? compareNumbers(a.substring(i, endA), b.substring(j, endB))
                    : Character.compare(a.charAt(i), b.charAt(j));
            if (step != 0) {
                return step;
            }
            i = numbers ? endA : i + 1;
            j = numbers ? endB : j + 1;
        }
        int rest = Integer.compare(a.length() - i, b.length() - j);
        return rest != 0 ? rest : a.compareTo(b);
    }

    private static int compareNumbers(String a, String b) {
        int zerosA = leadingZeros(a);
        int zerosB = leadingZeros(b);
        int length = Integer.compare(a.length() - zerosA, b.length() - zerosB);
        return length != 0 ? length : a.substring(zerosA).compareTo(b.substring(zerosB));
    }

    private static int leadingZeros(String digits) {
        int zeros = 0;
        while (zeros < digits.length() && digits.charAt(zeros) == '0') {
            zeros++;
        }
        return zeros;
    }

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }
}
