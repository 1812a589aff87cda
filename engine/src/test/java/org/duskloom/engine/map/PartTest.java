package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class PartTest {
    private static Part part(String name, int... pixels) {
        return new Part(name, pixels, List.of());
    }

    @Test
    void keepsTheOrderOfItsPixels() {
        Part falling = part("top", 5, 4, 3);
        assertThat(falling.pixels()).containsExactly(5, 4, 3);
        assertThat(falling.isRising()).isFalse();
        assertThat(part("top", 3, 4, 5).isRising()).isTrue();
        assertThat(falling).isNotEqualTo(part("top", 3, 4, 5)).isEqualTo(part("top", 5, 4, 3));
    }

    @Test
    void cannotBeChangedFromOutside() {
        int[] pixels = {1, 2};
        Part part = part("rim", pixels);
        pixels[0] = 7;
        part.pixels()[1] = 7;
        assertThat(part.pixels()).containsExactly(1, 2);
    }

    @Test
    void ordersNumberedChildrenByNumber() {
        Part petals = Part.enclosing("petals", new int[0], List.of(part("10", 0), part("2", 1), part("1", 2)));
        assertThat(petals.children()).extracting(Part::name).containsExactly("1", "2", "10");
    }

    @Test
    void ordersNamedChildrenByLowestPixelThenByName() {
        Part all =
                Part.enclosing("all", new int[0], List.of(part("b", 4, 1), part("c", 0), part("a", 1), part("2", 3)));
        assertThat(all.children()).extracting(Part::name).containsExactly("c", "a", "b", "2");
    }

    @Test
    void enclosesItsChildrenBehindItsOwnPixels() {
        Part all = Part.enclosing("all", new int[] {9, 3}, List.of(part("a", 3, 4), part("b", 5)));
        assertThat(all.pixels()).containsExactly(9, 3, 4, 5);
        assertThat(all.child("b")).contains(part("b", 5));
        assertThat(all.child("c")).isEmpty();
    }

    @Test
    void refusesWhatIsNoPart() {
        assertThatIllegalArgumentException().isThrownBy(() -> part("rim"));
        assertThatIllegalArgumentException().isThrownBy(() -> part("rim", -1));
        assertThatIllegalArgumentException().isThrownBy(() -> part("rim", 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> part("a/b", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Part("rim", new int[] {1}, List.of(part("a", 2))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Part("rim", new int[] {1}, List.of(part("a", 1), part("a", 1))));
    }
}
