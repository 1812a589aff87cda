package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MemberListsTest {
    private static final Member FENCE = member("fence", 4, 5);
    private static final Member RIM = member("daisy-1/rim", 1, 0);
    private static final Member DAISY = member("daisy-1", 0, 1, 2, 3);

    private static final Map<String, Optional<List<Member>>> KNOWN = Map.of(
            "fence", Optional.of(List.of(FENCE)),
            "flowers", Optional.of(List.of(DAISY, RIM)),
            "rims", Optional.of(List.of(member("daisy-1/rim", 1, 0))),
            "wrong", Optional.empty());

    private static Member member(String name, int... pixels) {
        return new Member(name, 0, pixels);
    }

    private static Optional<List<Member>> joined(String... addresses) {
        List<TextNode> nodes = IntStream.range(0, addresses.length)
                .mapToObj(i -> new TextNode(new Location("show.json", 1, 1 + i), addresses[i]))
                .toList();
        return MemberLists.joined(nodes, node -> KNOWN.get(node.value()));
    }

    private static BitSet set(int... pixels) {
        BitSet set = new BitSet();
        IntStream.of(pixels).forEach(set::set);
        return set;
    }

    /** In the order of the list, and what comes again, even made anew, only once. */
    @Test
    void joinsInOrderWithoutRepeats() {
        assertThat(joined("fence", "flowers", "rims", "fence").orElseThrow()).containsExactly(FENCE, DAISY, RIM);
        assertThat(joined("flowers", "fence").orElseThrow()).containsExactly(DAISY, RIM, FENCE);
        assertThat(joined("fence").orElseThrow()).containsExactly(FENCE);
    }

    /** One wrong address, of which an error was told, and nothing is played on half of a list. */
    @Test
    void givesNothingIfOneAddressIsWrong() {
        assertThat(joined("fence", "wrong", "flowers")).isEmpty();
        assertThat(joined("wrong")).isEmpty();
    }

    @Test
    void takesPixelsAway() {
        List<Member> all = List.of(DAISY, RIM, FENCE);
        assertThat(MemberLists.without(all, set(0, 1))).containsExactly(member("daisy-1", 2, 3), FENCE);
        assertThat(MemberLists.without(all, set(1)))
                .containsExactly(member("daisy-1", 0, 2, 3), member("daisy-1/rim", 0), FENCE);
        assertThat(MemberLists.without(all, set(9))).containsExactly(DAISY, RIM, FENCE);
        assertThat(MemberLists.without(all, set(0, 1, 2, 3, 4, 5))).isEmpty();
    }

    @Test
    void keepsOnlyPixelsOfAnotherInTheirOwnOrder() {
        assertThat(MemberLists.onlyPixelsOf(member("x", 1, 2, 0), List.of(RIM, DAISY, FENCE)))
                .containsExactly(RIM, member("daisy-1", 0, 1, 2));
    }

    /** Thinning against counting pixel by pixel: what is taken and what is kept are all, and nothing is in both. */
    @Test
    void partsAMemberInTwo() {
        Random random = new Random(4);
        for (int run = 0; run < 200; run++) {
            int[] pixels = random.ints(0, 40).distinct().limit(12).toArray();
            int[] taken =
                    random.ints(0, 40).distinct().limit(random.nextInt(30)).toArray();
            Member whole = member("bed", pixels);
            List<Integer> left = new ArrayList<>();
            List<Integer> kept = new ArrayList<>();
            for (int pixel : pixels) {
                (IntStream.of(taken).anyMatch(one -> one == pixel) ? kept : left).add(pixel);
            }
            assertPixels(MemberLists.without(List.of(whole), set(taken)), left);
            if (taken.length > 0) {
                assertPixels(MemberLists.onlyPixelsOf(member("other", taken), List.of(whole)), kept);
            }
        }
    }

    private static void assertPixels(List<Member> members, List<Integer> pixels) {
        if (pixels.isEmpty()) {
            assertThat(members).isEmpty();
        } else {
            assertThat(members)
                    .containsExactly(member(
                            "bed", pixels.stream().mapToInt(Integer::intValue).toArray()));
        }
    }

    @Test
    void membersAreEqualByContent() {
        assertThat(member("a", 1, 2)).isEqualTo(member("a", 1, 2)).hasSameHashCodeAs(member("a", 1, 2));
        assertThat(member("a", 1, 2)).isNotEqualTo(member("a", 2, 1)).isNotEqualTo(member("b", 1, 2));
        assertThat(member("a", 1, 2))
                .isNotEqualTo(new Member("a", 1, new int[] {1, 2}))
                .isNotEqualTo(null);
        assertThat(member("a", 1, 2)).hasToString("a [1, 2]");
        assertThat(MemberLists.pixelsOf(List.of(RIM, FENCE))).isEqualTo(set(0, 1, 4, 5));
    }

    @ParameterizedTest
    @CsvSource({"daisy-1, ''", "daisy-1/rim, rim", "daisy-1/petals/3, petals/3"})
    void knowTheirPart(String name, String path) {
        assertThat(member(name, 0).partPath()).isEqualTo(path);
        assertThat(member(name, 0, 1, 2).pixelCount()).isEqualTo(3);
    }
}
