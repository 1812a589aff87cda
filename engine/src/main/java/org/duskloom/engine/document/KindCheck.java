package org.duskloom.engine.document;

import java.util.Optional;
import org.duskloom.engine.problem.Problems;

/**
 * Holds values against what is declared of them, down to the last field: for what is written and not used, so that
 * nobody else reads it. What only a reader of its own could tell is left alone.
 */
public final class KindCheck {
    private final Problems problems;

    private KindCheck(Problems problems) {
        this.problems = problems;
    }

    /**
     * Adds an error for everything that a value must not be.
     *
     * @param what names the value in messages
     */
    public static void check(Node node, ValueKind<?> kind, String what, Problems problems) {
        new KindCheck(problems).check(node, kind, what);
    }

    private void check(Node node, ValueKind<?> kind, String what) {
        if (kind instanceof ValueKind.Own own) {
            own(node, own, what);
            return;
        }
        Optional<?> read = kind.read(node, what, problems);
        if (kind instanceof ValueKind.Nested nested) {
            read.ifPresent(fields -> nested((Fields) fields, nested.object()));
        } else if (kind instanceof ValueKind.Items items && node instanceof ListNode list) {
            list.items().forEach(item -> check(item, items.item(), "an item of " + what));
        } else if (kind instanceof ValueKind.Named named && node instanceof ObjectNode object) {
            object.fields()
                    .forEach(field -> check(field.value(), named.value(), "\"" + field.name() + "\" of " + what));
        }
    }

    private void nested(Fields fields, DeclaredObject object) {
        for (DeclaredField<?> field : object.fields()) {
            fields.node(field).ifPresent(node -> check(node, field.kind(), fields.label(field)));
        }
    }

    /** Of the forms that are of the value's type the one with the fewest errors counts. */
    private void own(Node node, ValueKind.Own own, String what) {
        ValueKind<?> nearest = null;
        int fewest = Integer.MAX_VALUE;
        for (ValueKind<?> form : own.forms()) {
            Problems found = new Problems();
            check(node, form, what, found);
            int errors = found.errorCount();
            if (errors > 0 && !isOfType(node, form)) {
                errors = Integer.MAX_VALUE - 1;
            }
            if (errors < fewest) {
                fewest = errors;
                nearest = form;
            }
        }
        if (nearest != null) {
            check(node, nearest, what);
        }
    }

    private static boolean isOfType(Node node, ValueKind<?> form) {
        if (node instanceof ObjectNode) {
            return form instanceof ValueKind.Nested || form instanceof ValueKind.Named;
        }
        if (node instanceof ListNode) {
            return form instanceof ValueKind.Items || form instanceof ValueKind.Texts;
        }
        return node instanceof NumberNode
                ? form instanceof ValueKind.Number || form instanceof ValueKind.Whole
                : form instanceof ValueKind.Text || form instanceof ValueKind.Choice;
    }
}
