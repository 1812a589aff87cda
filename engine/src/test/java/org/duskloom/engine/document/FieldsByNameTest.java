package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

/** Whether a few fields are gone through or a table is made of many, the same are found, also while they grow. */
class FieldsByNameTest {
    @Test
    void findsFieldsWhileTheyGrow() {
        List<Field> fields = new ArrayList<>();
        FieldsByName byName = new FieldsByName(fields);
        for (int count = 0; count < 40; count++) {
            assertThat(byName.find("field-" + count)).isNull();
            Location place = new Location("show.json", count + 1, 1);
            fields.add(new Field("field-" + count, place, new TextNode(place, "text")));
            for (int i = 0; i <= count; i++) {
                assertThat(byName.find("field-" + i)).isSameAs(fields.get(i));
            }
        }
    }
}
