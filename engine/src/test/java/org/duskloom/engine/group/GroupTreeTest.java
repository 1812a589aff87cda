package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroupTreeTest {
    /** Global indices: daisy-1 is 0 to 3, fence 4 to 5, daisy-2 6 to 8, pond 9. */
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy-1,1,0,0,rim#2
            daisy-1,2,1,0,rim#1
            daisy-1,3,2,0,petals/1
            daisy-1,4,3,0,petals/2
            fence,1,0,9,posts
            fence,2,1,9,
            daisy-2,1,0,5,rim
            daisy-2,2,1,5,petals/1
            daisy-2,3,2,5,petals/10
            pond,1,9,9,
            """);

    private final Problems problems = new Problems();

    private GroupTree tree(String groups) {
        return GroupReader.read(Inputs.json(groups), MAP, problems);
    }

    private Optional<List<Member>> resolve(GroupTree tree, String... addresses) {
        List<TextNode> nodes = Arrays.stream(addresses)
                .map(text -> new TextNode(new Location("show.json", 7, 9), text))
                .toList();
        return tree.resolve(nodes, problems);
    }

    private String members(GroupTree tree, String... addresses) {
        String shown = resolve(tree, addresses).map(List::toString).orElse("nothing");
        assertThat(Inputs.shown(problems)).isEmpty();
        return shown;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
            fence                = [fence [4, 5]]
            daisy-1/rim          = [daisy-1/rim [1, 0]]
            daisy-1/petals       = [daisy-1/petals [2, 3]]
            daisy-1/petals/2     = [daisy-1/petals/2 [3]]
            daisy-*              = [daisy-1 [0, 1, 2, 3], daisy-2 [6, 7, 8]]
            ????                 = [pond [9]]
            *                    = [daisy-1 [0, 1, 2, 3], daisy-2 [6, 7, 8], fence [4, 5], pond [9]]
            */rim                = [daisy-1/rim [1, 0], daisy-2/rim [6]]
            daisy-2/petals/*     = [daisy-2/petals/1 [7], daisy-2/petals/10 [8]]
            daisy-?/petals/1*    = [daisy-1/petals/1 [2], daisy-2/petals/1 [7], daisy-2/petals/10 [8]]
            daisy-1/*            = [daisy-1/rim [1, 0], daisy-1/petals [2, 3]]
            flowers              = [daisy-2 [6, 7, 8], daisy-1 [0, 1, 2, 3]]
            flowers/rim          = [daisy-2/rim [6], daisy-1/rim [1, 0]]
            rims                 = [daisy-1/rim [1, 0], daisy-2/rim [6]]
            inner/1              = [daisy-1/petals/1 [2], daisy-2/petals/1 [7]]
            inner/*              = [daisy-1/petals/1 [2], daisy-1/petals/2 [3], daisy-2/petals/1 [7], daisy-2/petals/10 [8]]
            flow*                = [daisy-2 [6, 7, 8], daisy-1 [0, 1, 2, 3]]
            flow*/rim            = [daisy-2/rim [6], daisy-1/rim [1, 0]]
            """)
    void resolvesAddresses(String address, String expected) {
        GroupTree tree = tree("""
                {"garden": ["flowers", "fence"], "flowers": ["daisy-2", "daisy-1", "daisy-*"],
                 "rims": "daisy-*/rim", "inner": ["daisy-*/petals"]}""");
        assertThat(members(tree, address)).isEqualTo(expected);
        assertThat(members(tree, address)).isEqualTo(expected);
    }

    /** Natural order of names is common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
            daisy-*       = daisy-1, daisy-2, daisy-10
            *             = daisy-1, daisy-2, daisy-10, fence, pond
            daisy-*/rim   = daisy-2/rim, daisy-10/rim
            flowers       = daisy-1, daisy-2, daisy-10
            """)
    void expandsPatternsInNaturalOrderWhateverTheOrderOfTheRows(String address, String expected) {
        List<String> rows = List.of(
                "daisy-10,1,0,0,rim",
                "pond,1,3,0,",
                "daisy-2,1,1,0,rim",
                "fence,1,4,0,",
                "daisy-1,1,2,0,",
                "fence,2,5,0,");
        for (int turn = 0; turn < rows.size(); turn++) {
            List<String> turned = new ArrayList<>(rows);
            Collections.rotate(turned, turn);
            PixelMap map = Maps.map("prop,pixel,x,y,part\n" + String.join("\n", turned));
            GroupTree tree = GroupReader.read(Inputs.json("{\"flowers\": [\"daisy-*\"]}"), map, problems);
            assertThat(resolve(tree, address).orElseThrow().stream().map(Member::name))
                    .containsExactly(expected.split(", "));
        }
    }

    @Test
    void keepsTheOrderOfAListAndDropsRepeats() {
        GroupTree tree = tree("{\"garden\": [\"flowers\", \"fence\"], \"flowers\": [\"daisy-*\"]}");
        assertThat(members(tree, "pond", "daisy-2", "garden", "daisy-1/rim", "pond"))
                .isEqualTo("[pond [9], daisy-2 [6, 7, 8], daisy-1 [0, 1, 2, 3], fence [4, 5], daisy-1/rim [1, 0]]");
        assertThat(members(tree)).isEqualTo("[]");
    }

    @Test
    void exceptTakesMembersAndPixelsAway() {
        GroupTree tree = tree("""
                {"most": {"all": ["*"], "except": ["pond", "daisy-*/petals", "fence"]},
                 "backs": {"all": ["daisy-1/rim", "daisy-1/petals"], "except": "daisy-1/petals/1"},
                 "again": ["most", "daisy-1"], "inMost": ["most/rim"]}""");
        assertThat(members(tree, "most")).isEqualTo("[daisy-1 [0, 1], daisy-2 [6]]");
        assertThat(members(tree, "backs")).isEqualTo("[daisy-1/rim [1, 0], daisy-1/petals [3]]");
        assertThat(members(tree, "again")).isEqualTo("[daisy-1 [0, 1], daisy-2 [6], daisy-1 [0, 1, 2, 3]]");
        assertThat(members(tree, "inMost")).isEqualTo("[daisy-1/rim [1, 0], daisy-2/rim [6]]");
    }

    @Test
    void keepsOfAGroupsPartsWhatExceptLeaves() {
        GroupTree tree = tree("{\"thin\": {\"all\": [\"daisy-1\"], \"except\": [\"daisy-1/petals/1\"]}}");
        assertThat(members(tree, "thin/petals")).isEqualTo("[daisy-1/petals [3]]");
    }

    @Test
    void aPatternInAGroupDoesNotMeanTheGroupItself() {
        GroupTree tree = tree("{\"row-a\": [\"fence\"], \"row-b\": [\"pond\"], \"row-all\": [\"row-*\"]}");
        assertThat(members(tree, "row-all")).isEqualTo("[fence [4, 5], pond [9]]");
        assertThat(members(tree, "row-*")).isEqualTo("[fence [4, 5], pond [9]]");
    }

    /** A pattern that matches props means them, not the groups that it matches too. */
    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
            flowers       = flowers
            flowers/rim   = flowers
            flow*         = flowers
            ?*s           = daisies,flowers
            dai*          = ''
            fence         = ''
            nothing       = ''
            no*thing      = ''
            flowers//     = ''
            """)
    void tellsWhichGroupsAreNamed(String address, String expected) {
        GroupTree tree = tree("{\"daisies\": [\"daisy-*\"], \"flowers\": [\"daisies\"], \"water\": [\"pond\"]}");
        TextNode written = new TextNode(new Location("show.json", 7, 9), address);
        assertThat(String.join(",", new TreeSet<>(tree.groupsNamedBy(List.of(written)))))
                .isEqualTo(expected);
    }

    @Test
    void namesEverything() {
        GroupTree tree = tree("{\"b\": [\"fence\"], \"a\": [\"b\"]}");
        assertThat(tree.groupNames()).containsExactly("b", "a");
        assertThat(tree.addresses())
                .containsExactly(
                        "daisy-1",
                        "daisy-1/rim",
                        "daisy-1/petals",
                        "daisy-1/petals/1",
                        "daisy-1/petals/2",
                        "fence",
                        "fence/posts",
                        "daisy-2",
                        "daisy-2/rim",
                        "daisy-2/petals",
                        "daisy-2/petals/1",
                        "daisy-2/petals/10",
                        "pond",
                        "b",
                        "a");
        assertThat(GroupTree.of(MAP).groupNames()).isEmpty();
        assertThat(tree.map()).isSameAs(MAP);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            dasy-1            ~ there is no prop and no group "dasy-1"        ~ did you mean "daisy-1"?
            gardn             ~ there is no prop and no group "gardn"         ~ did you mean "garden"?
            zzzzzz            ~ there is no prop and no group "zzzzzz"        ~ known: garden, hearts, daisy-1, fence, daisy-2, pond
            daisy-            ~ there is no prop and no group "daisy-"        ~ did you mean "daisy-*"?
            fence, pond       ~ there is no prop and no group "fence, pond"   ~ name each by itself, in a list: ["fence", "pond"]
            fence; pnd        ~ there is no prop and no group "fence; pnd"    ~ name each by itself, in a list: ["fence", "pond"]
            fence pond        ~ there is no prop and no group "fence pond"    ~ name each by itself, in a list: ["fence", "pond"]
            dasy-1/x,daisy-*  ~ there is no prop and no group "dasy-1"        ~ name each by itself, in a list: ["daisy-1/x", "daisy-*"]
            daisy-1/x, pond   ~ "daisy-1" has no part "x, pond"               ~ name each by itself, in a list: ["daisy-1/x", "pond"]
            fence, rose-*     ~ no prop and no group matches "fence, rose-*"  ~ known: garden, hearts, daisy-1, fence, daisy-2, pond
            fence, moonbeam   ~ there is no prop and no group "fence, moonbeam" ~ known: garden, hearts, daisy-1, fence, daisy-2, pond
            daisy             ~ there is no prop and no group "daisy"         ~ did you mean "daisy-*"?
            dasy-*            ~ no prop and no group matches "dasy-*"         ~ did you mean "daisy-1"?
            daisy-1/rimm      ~ "daisy-1" has no part "rimm"                  ~ did you mean "daisy-1/rim"?; it is defined at map.csv:2:1
            daisy-1/petals/3  ~ "daisy-1" has no part "petals/3"              ~ did you mean "daisy-1/petals/1"?
            daisy-1/x*        ~ "daisy-1" has no part "x*"                    ~ known: rim, petals, petals/1, petals/2
            pond/rim          ~ "pond" has no part "rim"                      ~ it has no parts; it is defined at map.csv:11:1
            daisy-*/rimm      ~ nothing in "daisy-*" has a part "rimm"        ~ did you mean "daisy-*/rim"?
            garden/rimm       ~ nothing in "garden" has a part "rimm"         ~ did you mean "garden/rim"?
            hearts/petals     ~ nothing in "hearts" has a part "petals"       ~ known: 1, 2
            hearts/11         ~ nothing in "hearts" has a part "11"           ~ did you mean "hearts/1"?
            po*/rim           ~ nothing in "po*" has a part "rim"             ~ no prop there has parts
            daisy-1//rim      ~ "daisy-1//rim" holds an empty name            ~ an address is prop, prop/part or group
            daisy-1/          ~ "daisy-1/" holds an empty name                ~ an address is prop, prop/part or group
            ``                ~ the address is empty                          ~ an address is prop, prop/part or group
            """)
    void teachesAddresses(String address, String message, String hint) {
        GroupTree tree = tree("{\"garden\": [\"*\"], \"hearts\": [\"daisy-1/petals\"]}");
        assertThat(resolve(tree, "fence", address)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("show.json:7:9: error: " + message)
                .contains("; " + hint);
    }

    /** Names that are refused where they are given are none to lead anybody to. */
    @Test
    void offersNoNameThatIsRefused() {
        GroupTree tree = tree("{\"dusk*\": [\"pond\"], \"\": [\"pond\"], \"hearts\": [\"daisy-1/petals\"]}");
        assertThat(resolve(tree, "moonbeam")).isEmpty();
        assertThat(Inputs.shown(problems))
                .filteredOn(line -> line.contains("moonbeam"))
                .singleElement()
                .asString()
                .contains("known: hearts, ")
                .doesNotContain("dusk*")
                .doesNotContain(", ,");
    }

    /** Of the name that looks the same nobody could see what is meant. */
    @Test
    void tellsOfNamesThatLookTheSame() {
        PixelMap map = Maps.map("prop,pixel,x,y\nG\u00E4nserich,1,0,0\n");
        GroupTree tree = GroupReader.read(Inputs.json("{}"), map, problems);
        assertThat(resolve(tree, "Ga\u0308nserich")).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .endsWith("; there is \"G\u00E4nserich\", which looks the same but has its accents stored in another"
                        + " way: type both names anew");
    }

    @Test
    void printsAWholeCircle() {
        GroupTree tree = tree("{\"a\": [\"fence\", \"b\"],\n \"b\": [\"c\"],\n \"c\": [\"pond\", \"b\"]}");
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:3:16: error: groups go in a circle: b -> c -> b; take one of them out of the circle");
        assertThat(tree.groupNames()).containsExactly("a", "b", "c");
        assertThat(resolve(tree, "a")).isEmpty();
        assertThat(problems.errorCount()).isEqualTo(1);
    }

    @Test
    void printsACircleThroughItselfAndThroughPatterns() {
        tree("{\"a\": [\"a\"], \"row-1\": [\"row-2\"], \"row-2\": [\"row-?\"]}");
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.replaceAll(";.*", ""))
                .containsExactly(
                        "in.json:1:8: error: groups go in a circle: a -> a",
                        "in.json:1:44: error: groups go in a circle: row-1 -> row-2 -> row-1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {"fence": ["pond"]}      ~ 1:2 ~ group "fence" has the name of a prop   ~ the prop is defined at map.csv:6:1
            {"a/b": ["pond"]}        ~ 1:2 ~ the group name "a/b" holds /           ~ ``
            {"": ["pond"]}           ~ 1:2 ~ the group name "" is empty             ~ ``
            {"a\\u0000": ["pond"]}   ~ 1:2 ~ the group name "a\\u0000" holds the invisible character U+0000 ~ ``
            {"a*": ["pond"], "b": ["a*"]} ~ 1:2 ~ the group name "a*" holds *       ~ ``
            {"a": []}                ~ 1:7 ~ group "a" is empty                     ~ name props, parts or groups
            {"a": {"all": []}}       ~ 1:15 ~ group "a" is empty                    ~ name props, parts or groups
            {"a": {"all": ["pond"], "except": ["*"]}} ~ 1:2 ~ group "a" is empty, "except" takes everything ~ take something out
            {"a": {"except": ["pond"]}} ~ 1:7 ~ group "a" lacks the field "all"     ~ ``
            {"a": {"all": "pond", "exept": "pond"}} ~ 1:23 ~ group "a" has no field "exept" ~ did you mean "except"?
            {"a": 3}                 ~ 1:7 ~ group "a" must be a text or a list of texts, not the number 3 ~ write "3" in quotes
            {"a": ["pond", 3]}       ~ 1:16 ~ an address of group "a" must be a text, not the number 3 ~ ``
            {"a": ["pond", "fnce"]}  ~ 1:16 ~ there is no prop and no group "fnce"  ~ did you mean "fence"?
            {"a": ["x*"]}            ~ 1:8 ~ no prop and no group matches "x*"      ~ known: a, daisy-1
            ["pond"]                 ~ 1:1 ~ "groups" must be an object { }, not a list ~ ``
            """)
    void teachesGroups(String groups, String place, String message, String hint) {
        tree(groups);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:" + place + ": error: " + message)
                .contains(hint);
    }

    @Test
    void warnsOfAnExceptionWithoutEffect() {
        GroupTree tree = tree("{\"a\": {\"all\": [\"daisy-*\"], \"except\": [\"pond\"]}}");
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:1:39: warning: \"pond\" is excepted from group \"a\", but is not in it; leave it out");
        assertThat(resolve(tree, "a").orElseThrow()).hasSize(2);
    }

    @Test
    void reportsAllWrongAddressesAndEachGroupOnce() {
        GroupTree tree = tree("{\"a\": [\"one\", \"two\"], \"b\": [\"a\", \"three\"]}");
        assertThat(resolve(tree, "a", "b", "four")).isEmpty();
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.replaceAll(";.*", ""))
                .containsExactly(
                        "in.json:1:8: error: there is no prop and no group \"one\"",
                        "in.json:1:15: error: there is no prop and no group \"two\"",
                        "in.json:1:34: error: there is no prop and no group \"three\"",
                        "show.json:7:9: error: there is no prop and no group \"four\"");
    }

    /** Whichever end the file begins with, and in between: 5,000 groups, each in the next. */
    @ParameterizedTest
    @CsvSource({"1", "-1", "1999"})
    void resolvesGroupsNestedDeeplyInAnyOrder(int step) {
        int count = 5_000;
        StringBuilder groups = new StringBuilder("{");
        for (int i = 0; i < count; i++) {
            int group = Math.floorMod(i * step, count);
            String inside = group == 0 ? "pond" : "g" + (group - 1);
            groups.append("\"g").append(group).append("\": [\"").append(inside).append("\"],\n");
        }
        assertThat(members(tree(groups + "\"last\": [\"g4999\"]}"), "last")).isEqualTo("[pond [9]]");
    }

    @Test
    void findsALongCircle() {
        StringBuilder groups = new StringBuilder("{");
        for (int i = 0; i < 5_000; i++) {
            groups.append("\"g").append(i).append("\": [\"g").append(i + 1).append("\"],\n");
        }
        tree(groups + "\"g5000\": [\"g0\"]}");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:5001:11: error: groups go in a circle: g0 -> g1 -> g2")
                .contains("-> g4999 -> g5000 -> g0; take one");
    }
}
