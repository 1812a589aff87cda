package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Addresses taken apart, found among props, and what is said of wrong ones. */
class AddressTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy-10,1,0,0,rim
            daisy-2,1,1,0,rim/top
            daisy-2,2,2,0,petals/1
            daisy-2,3,3,0,petals/2
            post,1,0,9,
            """);

    private final Problems problems = new Problems();

    private static TextNode node(String text) {
        return new TextNode(new Location("show.json", 7, 9), text);
    }

    @ParameterizedTest
    @CsvSource({"fence, fence, ''", "daisy-1/rim, daisy-1, rim", "d*/petals/3, d*, petals/3"})
    void isANameAndAPath(String text, String head, String path) {
        Address address = Address.of(node(text), problems).orElseThrow();
        assertThat(address.head()).isEqualTo(head);
        assertThat(address.path()).isEqualTo(path);
        assertThat(address.text()).isEqualTo(text);
        assertThat(problems.errorCount()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/rim", "daisy/", "daisy//rim", "daisy/ ", "  "})
    void refusesEmptyNames(String text) {
        assertThat(Address.of(node(text), problems)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("show.json:7:9: error: \"" + text + "\" holds an empty name");
    }

    @Test
    void refusesNothing() {
        assertThat(Address.of(node(""), problems)).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("the address is empty");
    }

    private static List<String> members(PropIndex index, int prop, String from, String... steps) {
        return index.members(prop, from, List.of(steps)).stream()
                .map(Member::toString)
                .toList();
    }

    @Test
    void findsPropsByPatternAsPeopleCount() {
        PropIndex index = new PropIndex(MAP);
        assertThat(index.propsMatching("daisy-*")).containsExactly(1, 0);
        assertThat(index.propsMatching("post")).containsExactly(2);
        assertThat(index.propsMatching("rose")).isEmpty();
    }

    @Test
    void findsPartsByPathAndByPattern() {
        PropIndex index = new PropIndex(MAP);
        assertThat(members(index, 1, "")).containsExactly("daisy-2 [1, 2, 3]");
        assertThat(members(index, 1, "", "petals", "2")).containsExactly("daisy-2/petals/2 [3]");
        assertThat(members(index, 1, "petals", "*")).containsExactly("daisy-2/petals/1 [2]", "daisy-2/petals/2 [3]");
        assertThat(members(index, 1, "", "*", "t?p")).containsExactly("daisy-2/rim/top [1]");
        assertThat(members(index, 1, "", "leaf")).isEmpty();
        assertThat(members(index, 2, "", "*")).isEmpty();
    }

    /** A member that is asked for twice is the same one, so that lists without repeats are cheap. */
    @Test
    void makesAMemberOnce() {
        PropIndex index = new PropIndex(MAP);
        Member one = index.members(1, "", List.of("petals", "1")).get(0);
        assertThat(index.members(1, "petals", List.of("?")).get(0)).isSameAs(one);
        assertThat(index.path(one)).isEqualTo("petals/1");
        assertThat(index.path(index.members(2, "", List.of()).get(0))).isEmpty();
    }

    private String said(String text) {
        Suggestions suggestions = new Suggestions(MAP, Set.of("flowers"), Set.of());
        suggestions.unknown(Address.of(node(text), problems).orElseThrow(), problems);
        return Inputs.shown(problems).get(0);
    }

    @Test
    void saysWhatWasMeant() {
        assertThat(said("dasy-2"))
                .contains("there is no prop and no group \"dasy-2\"")
                .contains("did you mean \"daisy-2\"?");
    }

    @Test
    void saysWhatThereIsWhereNothingIsNear() {
        assertThat(said("x*"))
                .contains("no prop and no group matches \"x*\"")
                .contains("known: flowers, daisy-10, daisy-2, post");
    }

    @Test
    void listsEverythingThatCanBeNamed() {
        assertThat(new Suggestions(MAP, Set.of("flowers"), Set.of()).addresses())
                .containsExactly(
                        "daisy-10",
                        "daisy-10/rim",
                        "daisy-2",
                        "daisy-2/rim",
                        "daisy-2/rim/top",
                        "daisy-2/petals",
                        "daisy-2/petals/1",
                        "daisy-2/petals/2",
                        "post",
                        "flowers");
    }

    /** A prop with a row that could not be read may have the part in that row: nothing false is said of it. */
    @Test
    void saysNothingOfPartsThatMayHaveBeenLost() {
        Address address = Address.of(node("post/leaf"), problems).orElseThrow();
        new Suggestions(MAP, Set.of(), Set.of("post"))
                .noPart(address, MAP.props().get(2), problems);
        assertThat(problems.errorCount()).isZero();
        new Suggestions(MAP, Set.of(), Set.of()).noPart(address, MAP.props().get(2), problems);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("\"post\" has no part \"leaf\"")
                .contains("it has no parts");
    }

    /** In whatever order groups are written, each comes after those that it names. */
    @Test
    void groupsComeAfterThoseTheyName() {
        Random random = new Random(8);
        for (int run = 0; run < 100; run++) {
            int count = 2 + random.nextInt(15);
            Map<String, List<String>> names = new LinkedHashMap<>();
            List<Integer> written = new ArrayList<>();
            for (int group = 0; group < count; group++) {
                written.add(random.nextInt(written.size() + 1), group);
            }
            for (int group : written) {
                List<String> inner = new ArrayList<>();
                for (int other = 0; other < group; other++) {
                    if (random.nextInt(3) == 0) {
                        inner.add("g" + other);
                    }
                }
                names.put("g" + group, inner);
            }
            List<String> order = order(names);
            assertThat(order).hasSize(count);
            names.forEach((name, inner) ->
                    inner.forEach(other -> assertThat(order.indexOf(other)).isLessThan(order.indexOf(name))));
            assertThat(problems.errorCount()).isZero();
        }
    }

    @Test
    void groupsInACircleAreToldWithAllOfIt() {
        order(Map.of("a", List.of("b"), "b", List.of("c"), "c", List.of("a")));
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .containsPattern("groups go in a circle: (a -> b -> c -> a|b -> c -> a -> b|c -> a -> b -> c)");
    }

    private List<String> order(Map<String, List<String>> names) {
        Map<String, GroupDefinition> definitions = new LinkedHashMap<>();
        names.forEach((name, inner) -> definitions.put(
                name,
                new GroupDefinition(
                        name,
                        new Location("show.json", 1, 1),
                        inner.stream().map(AddressTest::node).toList(),
                        List.of())));
        return GroupOrder.innermostFirst(
                definitions, head -> Stream.of(head).filter(names::containsKey).toList(), problems);
    }
}
