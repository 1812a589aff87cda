package org.duskloom.engine.document;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * Reads JSON (RFC 8259) into a tree of located values. Beyond the standard, comments ({@code //} and {@code /* *}{@code
 * /}) and a comma after the last item are allowed. Refused beyond the standard: a name twice in one object, a number
 * that is not finite (RFC 8259 section 6) or a whole number beyond 2^53 - 1 (RFC 7493 section 2.2), half a surrogate
 * pair in a text, and anything beyond the limits.
 */
public final class JsonReader {
    /** How deep lists and objects may be nested. */
    public static final int MAX_DEPTH = 64;

    /** How many names and values one document may hold, brackets counted. */
    public static final int MAX_TOKENS = 1_000_000;

    private static final int MAX_TEXT_CHARS = 1 << 20;
    private static final int MAX_NAME_CHARS = 1000;
    private static final int MAX_NUMBER_CHARS = 100;
    /** Texts up to so long, and so many of them, are looked for among those read before. */
    private static final int LONGEST_WORD = 60;

    private static final int MOST_WORDS = 10_000;
    private static final double LARGEST_WHOLE = 9_007_199_254_740_991.0;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            // Read so that they can be refused one by one, and reading goes on.
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
            .disable(TokenStreamFactory.Feature.INTERN_PROPERTY_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH)
                    .maxTokenCount(MAX_TOKENS)
                    .maxStringLength(MAX_TEXT_CHARS)
                    .maxNameLength(MAX_NAME_CHARS)
                    .maxNumberLength(MAX_NUMBER_CHARS)
                    .build())
            .build();

    private final SourceText source;
    private final LineCursor places;
    private final Problems problems;
    private final JsonParser parser;
    private final Deque<Integer> openBrackets = new ArrayDeque<>();
    private final Map<String, String> words = new HashMap<>();

    private JsonReader(SourceText source, Problems problems) {
        this.source = source;
        this.places = new LineCursor(source);
        this.problems = problems;
        this.parser = FACTORY.createParser(ObjectReadContext.empty(), source.text());
    }

    /**
     * Reads one document.
     *
     * @param source the file
     * @param problems where errors go
     * @return the value, or nothing if the text cannot be understood as JSON; a value in spite of errors where reading
     *     could go on (double names, refused numbers), so that the later checks report theirs in the same run
     */
    public static Optional<Node> read(SourceText source, Problems problems) {
        return new JsonReader(source, problems).document();
    }

    private Optional<Node> document() {
        try (parser) {
            JsonToken first = parser.nextToken();
            if (first == null) {
                problems.error(source.end(), "the file holds nothing but white space or comments");
                return Optional.empty();
            }
            Node root = value(first);
            if (parser.nextToken() != null) {
                problems.error(here(), "the document has ended, but more follows", "one file holds one value");
                return Optional.empty();
            }
            return Optional.of(root);
        } catch (JacksonException fault) {
            faultOf(fault).report(source, problems);
            return Optional.empty();
        }
    }

    private Node value(JsonToken token) {
        Location location = here();
        return switch (token) {
            case START_OBJECT -> object(location);
            case START_ARRAY -> list(location);
            case VALUE_STRING -> new TextNode(location, wellFormed(parser.getString(), location));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(token, location);
            case VALUE_TRUE -> new FlagNode(location, true);
            case VALUE_FALSE -> new FlagNode(location, false);
            case VALUE_NULL -> new NullNode(location);
            default -> throw new IllegalStateException("no value starts with " + token);
        };
    }

    private ObjectNode object(Location location) {
        openBrackets.push(offset(parser.currentTokenLocation()));
        List<Field> fields = new ArrayList<>();
        FieldsByName names = new FieldsByName(fields);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Location nameLocation = here();
            String name = wellFormed(parser.currentName(), nameLocation);
            Node value = value(parser.nextToken());
            Field before = names.find(name);
            if (before == null) {
                fields.add(new Field(name, nameLocation, value));
            } else {
                problems.error(
                        nameLocation,
                        Quoted.of(name) + " stands twice in one object",
                        "first at " + before.nameLocation() + "; rename or remove one of them");
            }
        }
        openBrackets.pop();
        return new ObjectNode(location, fields);
    }

    private ListNode list(Location location) {
        openBrackets.push(offset(parser.currentTokenLocation()));
        List<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(value(token));
        }
        openBrackets.pop();
        return new ListNode(location, items);
    }

    private NumberNode number(JsonToken token, Location location) {
        String written = parser.getString();
        double value = parser.getDoubleValue();
        String refusal = refusal(token, value, written);
        if (!refusal.isEmpty()) {
            problems.error(
                    location, refusal, "a number is finite, and a whole number at most 2^53 - 1 = 9007199254740991");
            return new NumberNode(location, Double.NaN, written);
        }
        if (value == 0 && written.matches("-?[0.]*[1-9].*")) {
            problems.warn(location, written + " is so small that it reads as 0", "write 0 if that is meant");
        }
        return new NumberNode(location, value, written);
    }

    private static String refusal(JsonToken token, double value, String written) {
        if (!Double.isFinite(value)) {
            return Character.isDigit(written.charAt(written.length() - 1))
                    ? written + " is too large for a number"
                    : written + " is not a number";
        }
        boolean large = token == JsonToken.VALUE_NUMBER_INT && Math.abs(value) > LARGEST_WHOLE;
        return large ? written + " is too large to be kept exactly" : "";
    }

    private String wellFormed(String text, Location location) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                if (!Character.isSurrogatePair(text.charAt(i), i + 1 < text.length() ? text.charAt(i + 1) : ' ')) {
                    problems.error(
                            location,
                            "the escape \\u" + Integer.toHexString(text.charAt(i)) + " is half a character",
                            "write the character itself");
                    return "";
                }
                i++;
            }
        }
        return shared(text);
    }

    /** One string for all that are equal: a long show says few words, each thousands of times. */
    private String shared(String text) {
        if (text.length() > LONGEST_WORD) {
            return text;
        }
        if (words.size() >= MOST_WORDS) {
            return words.getOrDefault(text, text);
        }
        String known = words.putIfAbsent(text, text);
        return known == null ? text : known;
    }

    private Location here() {
        return places.at(offset(parser.currentTokenLocation()));
    }

    private JsonFault faultOf(JacksonException fault) {
        int token = Math.max(0, offset(parser.currentTokenLocation()));
        return new JsonFault(
                String.valueOf(fault.getOriginalMessage()),
                // An exceeded limit comes without a place.
                fault.getLocation() == null ? token : offset(fault.getLocation()),
                token,
                openBrackets.isEmpty() ? -1 : openBrackets.peek());
    }

    private static int offset(TokenStreamLocation location) {
        return (int) location.getCharOffset();
    }
}
