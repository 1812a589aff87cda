package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a canvas hands to an effect; how canvases are laid over members is tested in the package of plans. */
class CanvasTest {
    /** Two members: a pair and a single light. */
    private static final Canvas THREE = Canvas.withoutKeys(
            new Canvas.Coordinates(new double[] {-1, 1, 0}, new double[] {0, 0.5, 0}, new double[] {0, 0, -0.25}),
            new int[] {0, 0, 1},
            new Canvas.Order(new double[] {0, 1, 0}, new int[] {2, 1}),
            new Parts());

    private static final class Parts implements PartFinder {
        @Override
        public Optional<int[]> find(int member, String address) {
            return member == 0 && address.equals("tip") ? Optional.of(new int[] {1}) : Optional.empty();
        }

        @Override
        public String memberName(int member) {
            return member == 0 ? "rake" : "lamp";
        }

        @Override
        public List<String> known(int member) {
            return member == 0 ? List.of("tip") : List.of();
        }
    }

    @Test
    void countsPixelsMembersAndSteps() {
        assertThat(THREE.pixelCount()).isEqualTo(3);
        assertThat(THREE.memberCount()).isEqualTo(2);
        assertThat(THREE.stepCount(0)).isEqualTo(2);
        assertThat(THREE.stepCount(1)).isEqualTo(1);
        assertThat(THREE.memberOf()).containsExactly(0, 0, 1);
        assertThat(THREE.z()).containsExactly(0, 0, -0.25);
    }

    @Test
    void asksItsFinderForParts() {
        assertThat(THREE.part(0, "tip"))
                .hasValueSatisfying(pixels -> assertThat(pixels).containsExactly(1));
        assertThat(THREE.part(1, "tip")).isEmpty();
        assertThat(THREE.memberName(1)).isEqualTo("lamp");
        assertThat(THREE.knownParts(0)).containsExactly("tip");
    }

    /** An effect that draws without saying so would change when a cue is played again: it is refused instead. */
    @Test
    void hasNoRandomKeysForWhoDoesNotSayThatItDraws() {
        assertThatThrownBy(THREE::pixelKey)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("uses chance");
        assertThatThrownBy(() -> THREE.memberKey(0)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void sharesAllButTheKeys() {
        Canvas keyed = THREE.withKeys(new long[] {11, 12}, new int[] {1, 2, 3});
        assertThat(keyed.pixelKey()).containsExactly(1, 2, 3);
        assertThat(keyed.memberKey(1)).isEqualTo(12);
        assertThat(keyed.x()).isSameAs(THREE.x());
        assertThat(keyed.y()).isSameAs(THREE.y());
        assertThat(keyed.z()).isSameAs(THREE.z());
        assertThat(keyed.position()).isSameAs(THREE.position());
        assertThat(keyed.memberOf()).isSameAs(THREE.memberOf());
        assertThat(keyed.parts()).isSameAs(THREE.parts());
        assertThat(keyed.stepCount(0)).isEqualTo(2);
        assertThatThrownBy(() -> THREE.withKeys(null, new int[3])).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> THREE.withKeys(new long[2], null)).isInstanceOf(NullPointerException.class);
    }

    @Test
    void keepsItsKeysWithAnotherFinder() {
        Parts others = new Parts();
        Canvas other = THREE.withKeys(new long[] {11, 12}, new int[] {1, 2, 3}).withParts(others);
        assertThat(other.parts()).isSameAs(others);
        assertThat(other.pixelKey()).containsExactly(1, 2, 3);
        assertThat(other.memberKey(0)).isEqualTo(11);
        assertThat(other.position()).isSameAs(THREE.position());
    }
}
