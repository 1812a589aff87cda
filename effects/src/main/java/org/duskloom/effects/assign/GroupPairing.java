package org.duskloom.effects.assign;

/**
 * A first pairing of many points with as many or fewer others, each of the few used evenly. Both are gathered in groups
 * of one size, the groups are paired exactly by their middles, and the points within a pair of groups by halving. That
 * gets right how much light goes where on the whole, which halving alone does not where points lie in heaps.
 *
 * <p>The points that no group has room for are so many, and the groups so few, that groups and rest can both be used
 * evenly. O(n log n) on average, and the exact pairing of a number of groups that does not grow with n.
 */
final class GroupPairing {
    /** The most groups. Chosen by measurement. */
    private static final int GROUPS = 256;

    private static final int FEWEST_GROUPS = 4;

    private final Points many;
    private final Points few;
    private final int uses;
    private final int groupSize;
    private final int fewGroups;
    private final int manyGroups;

    private GroupPairing(Points many, Points few) {
        this.many = many;
        this.few = few;
        uses = many.count() / few.count();
        groupSize = (many.count() + GROUPS - 1) / GROUPS;
        boolean noRest = few.count() % groupSize == 0 && many.count() % groupSize == 0;
        int fitting = few.count() / groupSize - (noRest ? 0 : 1);
        fewGroups = fitting < FEWEST_GROUPS ? 0 : fitting;
        manyGroups = manyGroups();
    }

    /**
     * As many as can be, so that the groups of the few are used evenly, and the rest of them by the rest of the many.
     * Where there is a rest of the few it is as large as a group at least, so that one such number there must be.
     */
    private int manyGroups() {
        int fewRest = few.count() - fewGroups * groupSize;
        int most = Math.min((many.count() - uses * fewRest) / groupSize, (uses + 1) * fewGroups);
        return fewGroups == 0 ? 0 : most;
    }

    /** For each of the many, the number of its partner among the few. */
    static int[] partners(Points many, Points few) {
        return new GroupPairing(many, few).partners();
    }

    private int[] partners() {
        Groups ofMany = new Groups(many, groupSize, manyGroups);
        Groups ofFew = new Groups(few, groupSize, fewGroups);
        int[] manyNumbers = new int[many.count()];
        int[] fewNumbers = new int[few.count()];
        ofMany.copyRest(manyNumbers);
        ofFew.copyRest(fewNumbers);
        HalvingPairing pairing = new HalvingPairing(many, few, manyNumbers, fewNumbers, uses);
        int[] groupOf = fewGroups == 0 ? new int[0] : ExactPairing.partners(ofMany.middles(), ofFew.middles());
        int manyTo = 0;
        for (int group = 0; group < fewGroups; group++) {
            int manyFrom = manyTo;
            for (int i = 0; i < groupOf.length; i++) {
                if (groupOf[i] == group) {
                    ofMany.copy(i, manyNumbers, manyTo);
                    manyTo += groupSize;
                }
            }
            ofFew.copy(group, fewNumbers, group * groupSize);
            pairing.pair(manyFrom, manyTo, group * groupSize, (group + 1) * groupSize);
        }
        pairing.pair(manyTo, many.count(), fewGroups * groupSize, few.count());
        return pairing.partner();
    }
}
