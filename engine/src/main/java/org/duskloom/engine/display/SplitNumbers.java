package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.problem.Problems;

/** Finds places in which numbers with a decimal comma have become two numbers each. */
final class SplitNumbers {
    private SplitNumbers() {}

    /** The place with decimal dots, where twice as many whole numbers stand as a place has; else nothing. */
    static Optional<String> joined(List<Node> items) {
        if (items.size() != 4 && items.size() != 6) {
            return Optional.empty();
        }
        List<String> numbers = new ArrayList<>();
        boolean anyDecimal = false;
        for (int i = 0; i < items.size(); i += 2) {
            String decimals = written(items.get(i + 1));
            if (!written(items.get(i)).matches("-?[0-9]+") || !decimals.matches("[0-9]+")) {
                return Optional.empty();
            }
            anyDecimal |= !decimals.matches("0+");
            numbers.add(written(items.get(i)) + "." + decimals);
        }
        return anyDecimal ? Optional.of("[" + String.join(", ", numbers) + "]") : Optional.empty();
    }

    /**
     * Adds a warning for each place of three numbers of which the first two are closed up and the third is not, as in
     * {@code [-90,5, 90]}, if all places of three are written so, and others have two.
     */
    static void warn(List<Node> places, Problems problems) {
        List<ListNode> flat = ofSize(places, 2);
        List<ListNode> deep = ofSize(places, 3);
        if (flat.isEmpty() || !deep.stream().allMatch(SplitNumbers::isClosedUp)) {
            return;
        }
        for (ListNode place : deep) {
            String first =
                    written(place.items().get(0)) + "." + written(place.items().get(1));
            problems.warn(
                    place.location(),
                    "a place of three numbers, and others have two",
                    "if its first comma is a decimal sign, write [" + first + ", "
                            + written(place.items().get(2)) + "]; else put a space behind it");
        }
    }

    private static List<ListNode> ofSize(List<Node> places, int size) {
        return places.stream()
                .filter(ListNode.class::isInstance)
                .map(ListNode.class::cast)
                .filter(place -> place.items().size() == size)
                .toList();
    }

    private static boolean isClosedUp(ListNode place) {
        Node first = place.items().get(0);
        Node second = place.items().get(1);
        return written(first).matches("-?[0-9]+")
                && written(second).matches("[0-9]+")
                && gap(first, second) == 0
                && gap(second, place.items().get(2)) > 0;
    }

    /** How many signs stand between the comma and the next number. */
    private static int gap(Node number, Node next) {
        boolean oneLine = number.location().line() == next.location().line();
        return oneLine
                ? next.location().column()
                        - number.location().column()
                        - written(number).length()
                        - 1
                : Integer.MAX_VALUE;
    }

    private static String written(Node item) {
        return item instanceof NumberNode number ? number.written() : "";
    }
}
