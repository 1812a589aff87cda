package org.duskloom.engine.wire;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Problems;

/** Reads a curve: a word, or {@code {"gamma": 2.2}}. */
final class CurveReader {
    private static final DeclaredField<Double> GAMMA = DeclaredField.required(
            "gamma",
            new ValueKind.Number("", Curve.Gamma.LEAST, Curve.Gamma.MOST),
            "the power of the sRGB code that is sent as duty");
    private static final DeclaredObject POWER = DeclaredObject.of("gamma", GAMMA);
    private static final Map<String, Curve> BY_WORD = Map.of("linear", new Curve.Linear(), "codes", new Curve.Codes());
    private static final ValueKind.Choice<String> WORDS = ValueKind.Choice.of(List.of("linear", "codes"), word -> word);

    /** What may be written. */
    static final ValueKind.Own CURVE =
            ValueKind.Own.of(WORDS.phrase() + ", or object: " + POWER.name(), WORDS, new ValueKind.Nested(POWER));

    private CurveReader() {}

    static Optional<Curve> read(Node node, String what, Problems problems) {
        if (node instanceof ObjectNode) {
            return Fields.of(node, POWER, what, problems)
                    .flatMap(fields -> fields.given(GAMMA))
                    .map(Curve.Gamma::new);
        }
        return WORDS.read(node, what, problems).map(BY_WORD::get);
    }
}
