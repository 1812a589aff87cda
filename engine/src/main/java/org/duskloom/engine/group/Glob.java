package org.duskloom.engine.group;

/** Patterns for one name: {@code *} stands for any number of characters, {@code ?} for one code point. */
public final class Glob {
    private Glob() {}

    static boolean isPattern(String name) {
        return name.indexOf('*') >= 0 || name.indexOf('?') >= 0;
    }

    /**
     * Whether the whole name matches. Goes back to the last star only, so that many stars cost no more than n times m.
     */
    public static boolean matches(String pattern, String name) {
        int p = 0;
        int n = 0;
        int star = -1;
        int retry = 0;
        while (n < name.length()) {
            if (p < pattern.length() && pattern.charAt(p) == '*') {
                star = p++;
                retry = n;
            } else if (p < pattern.length() && pattern.charAt(p) == '?') {
                p++;
                n += Character.charCount(name.codePointAt(n));
            } else if (p < pattern.length() && pattern.charAt(p) == name.charAt(n)) {
                p++;
                n++;
            } else if (star >= 0) {
                p = star + 1;
                retry += Character.charCount(name.codePointAt(retry));
                n = retry;
            } else {
                return false;
            }
        }
        while (p < pattern.length() && pattern.charAt(p) == '*') {
            p++;
        }
        return p == pattern.length();
    }
}
