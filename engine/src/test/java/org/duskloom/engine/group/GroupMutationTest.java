package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the groups and addresses, resolving ends with members or with errors, never with an exception. */
class GroupMutationTest {
    private static final PixelMap MAP =
            Maps.map("prop,pixel,x,y,part\na1,1,0,0,r;p/1\na1,2,1,0,p/2\na2,1,2,0,r\nb,1,3,0,\n");
    private static final String SOUND = """
            {"g": ["a1", "a?/r"], "h": {"all": ["*", "g/r"], "except": ["b", "a1/p/*"]}, "gg": ["g", "h", "g*"]}""";
    private static final String SPICE = "abghrp12/*?\",:[]{} ";

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44})
    void survivesMutations(long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int round = 0; round < 5_000; round++) {
            Problems problems = new Problems();
            byte[] bytes = mutated(SOUND, random.nextInt(4), random).getBytes(StandardCharsets.UTF_8);
            GroupTree tree = SourceText.of(bytes, "g.json", problems)
                    .flatMap(source -> JsonReader.read(source, problems))
                    .map(node -> GroupReader.read(node, MAP, problems))
                    .orElse(GroupTree.of(MAP));
            String text = mutated("gg/r", random.nextInt(2), random);
            TextNode address = new TextNode(new Location("s.json", 1, 1), text);
            Optional<List<Member>> members = tree.resolve(List.of(address), problems);
            assertThat(members.isPresent() || problems.hasErrors()).isTrue();
            members.ifPresent(list -> assertThat(list).doesNotHaveDuplicates().allSatisfy(GroupMutationTest::check));
            for (Problem problem : problems.inFileOrder()) {
                assertThat(problem.location().line()).isPositive();
            }
            sound += problems.hasErrors() ? 0 : 1;
        }
        assertThat(sound).isBetween(50, 4_900);
    }

    private static void check(Member member) {
        assertThat(member.pixels()).isNotEmpty().doesNotHaveDuplicates();
        String prop = MAP.props().get(member.propIndex()).name();
        assertThat(member.name()).startsWith(prop);
        for (int pixel : member.pixels()) {
            assertThat(MAP.propIndexOf(pixel)).isEqualTo(member.propIndex());
        }
    }

    private static String mutated(String text, int times, Random random) {
        StringBuilder mutated = new StringBuilder(text);
        for (int i = 0; i < times; i++) {
            mutated.setCharAt(random.nextInt(text.length()), SPICE.charAt(random.nextInt(SPICE.length())));
        }
        return mutated.toString();
    }
}
