package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Documents written here at random, with gaps, remarks and escapes wherever RFC 8259 or this reader allows them: every
 * value comes back as it was, and stands where it was written.
 */
class JsonPlacesTest {
    private static final List<String> GAPS =
            List.of("", "", "", " ", "\n", "\r\n", "\r", "\t", "  ", "/* é \n \ud83c\udf3c */", "// [{\"\r\n");

    /** Each as it is written, and what it means: RFC 8259, section 7. */
    private static final List<String[]> TEXTS = List.of(
            new String[] {"", ""},
            new String[] {"dusk", "dusk"},
            new String[] {"dusky pond", "dusky pond"},
            new String[] {"\\\"", "\""},
            new String[] {"\\\\", "\\"},
            new String[] {"\\/ /", "/ /"},
            new String[] {"\\b\\f\\n\\r\\t", "\b\f\n\r\t"},
            new String[] {"\\u00e4 \\u00E4 ä", "ä ä ä"},
            new String[] {"\\ud83c\\udf3c \ud83c\udf3c", "\ud83c\udf3c \ud83c\udf3c"},
            new String[] {"// /* no remark */", "// /* no remark */"},
            new String[] {"{[:,]}", "{[:,]}"});

    private Random random;
    private final StringBuilder json = new StringBuilder();
    private final List<String> expected = new ArrayList<>();
    private int line = 1;
    private int column = 1;
    private char before;

    /** Counts lines and columns as an editor does: CR LF is one end, and a character is one column. */
    private void write(String text) {
        text.codePoints().forEach(point -> {
            if (point == '\n' && before == '\r') {
                // That line has ended.
            } else if (point == '\n' || point == '\r') {
                line++;
                column = 1;
            } else {
                column++;
            }
            before = (char) point;
        });
        json.append(text);
    }

    private void gap() {
        for (int i = random.nextInt(3); i > 0; i--) {
            write(GAPS.get(random.nextInt(GAPS.size())));
        }
    }

    private void expect(String what) {
        expected.add(line + ":" + column + " " + what);
    }

    private String[] text() {
        return TEXTS.get(random.nextInt(TEXTS.size()));
    }

    private void value(int depth) {
        int kind = random.nextInt(depth > 4 ? 5 : 8);
        switch (kind) {
            case 0 -> scalar("null", "null");
            case 1 -> scalar("true", "true");
            case 2 -> scalar("false", "false");
            case 3 -> {
                String number =
                        List.of("0", "-0.5", "12", "1e3", "1.25E-2", "-7").get(random.nextInt(6));
                scalar(number, String.valueOf(Double.parseDouble(number)));
            }
            case 4 -> {
                String[] text = text();
                scalar('"' + text[0] + '"', text[1]);
            }
            case 5 -> list(depth);
            default -> object(depth);
        }
    }

    private void scalar(String written, String meant) {
        expect(meant);
        write(written);
    }

    private void list(int depth) {
        int count = random.nextInt(4);
        expect("list of " + count);
        write("[");
        for (int i = 0; i < count; i++) {
            gap();
            value(depth + 1);
            gap();
            write(i < count - 1 || random.nextBoolean() ? "," : "");
        }
        gap();
        write("]");
    }

    private void object(int depth) {
        int count = random.nextInt(4);
        expect("object of " + count);
        write("{");
        for (int i = 0; i < count; i++) {
            gap();
            String[] name = text();
            expect("field " + i + name[1]);
            write('"' + String.valueOf(i) + name[0] + '"');
            gap();
            write(":");
            gap();
            value(depth + 1);
            gap();
            write(i < count - 1 || random.nextBoolean() ? "," : "");
        }
        gap();
        write("}");
    }

    private static void addTo(List<String> found, Node node) {
        String place = place(node.location());
        if (node instanceof ListNode list) {
            found.add(place + "list of " + list.items().size());
            list.items().forEach(item -> addTo(found, item));
        } else if (node instanceof ObjectNode object) {
            found.add(place + "object of " + object.fields().size());
            for (Field field : object.fields()) {
                found.add(place(field.nameLocation()) + "field " + field.name());
                addTo(found, field.value());
            }
        } else {
            found.add(place + scalar(node));
        }
    }

    private static String place(Location location) {
        return location.line() + ":" + location.column() + " ";
    }

    private static String scalar(Node node) {
        if (node instanceof TextNode text) {
            return text.value();
        }
        if (node instanceof NumberNode number) {
            return String.valueOf(number.value());
        }
        return node instanceof FlagNode flag ? String.valueOf(flag.value()) : "null";
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void everyValueIsFoundWhereItWasWritten(long seed) {
        Random seeds = new Random(seed);
        for (int round = 0; round < 400; round++) {
            JsonPlacesTest document = new JsonPlacesTest();
            document.random = new Random(seeds.nextLong());
            document.gap();
            document.list(0);
            document.gap();
            List<String> found = new ArrayList<>();
            addTo(found, Inputs.json(document.json.toString()));
            assertThat(found).as("%s", document.json).isEqualTo(document.expected);
        }
    }
}
