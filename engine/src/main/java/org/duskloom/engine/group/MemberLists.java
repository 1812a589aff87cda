package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.duskloom.engine.document.TextNode;

/** Joins and thins lists of members. */
final class MemberLists {
    private MemberLists() {}

    /** The members of all addresses in order, without repeats; empty if one of the addresses gives nothing. */
    static Optional<List<Member>> joined(List<TextNode> addresses, Function<TextNode, Optional<List<Member>>> expand) {
        if (addresses.size() == 1) {
            return expand.apply(addresses.get(0));
        }
        Set<Member> all = new LinkedHashSet<>();
        boolean complete = true;
        for (TextNode address : addresses) {
            Optional<List<Member>> members = expand.apply(address);
            complete &= members.isPresent();
            members.ifPresent(all::addAll);
        }
        return complete ? Optional.of(List.copyOf(all)) : Optional.empty();
    }

    static BitSet pixelsOf(List<Member> members) {
        BitSet pixels = new BitSet();
        members.forEach(member -> Arrays.stream(member.pixels()).forEach(pixels::set));
        return pixels;
    }

    /** The members without those pixels; members that lose all of theirs are left out. */
    static List<Member> without(List<Member> members, BitSet pixels) {
        return thinned(members, pixels, false);
    }

    /** The members with those pixels only that another member has. */
    static List<Member> onlyPixelsOf(Member limit, List<Member> members) {
        return thinned(members, pixelsOf(List.of(limit)), true);
    }

    private static List<Member> thinned(List<Member> members, BitSet pixels, boolean keepSet) {
        List<Member> thinned = new ArrayList<>();
        for (Member member : members) {
            int[] kept = Arrays.stream(member.pixels())
                    .filter(pixel -> pixels.get(pixel) == keepSet)
                    .toArray();
            if (kept.length == member.pixelCount()) {
                thinned.add(member);
            } else if (kept.length > 0) {
                thinned.add(new Member(member.name(), member.propIndex(), kept));
            }
        }
        return thinned;
    }
}
