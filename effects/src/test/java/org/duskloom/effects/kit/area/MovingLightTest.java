package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** How far pictures that move are reduced, so that they fit into memory: 2^22 pixels. */
class MovingLightTest {
    @Test
    void picturesThatFitAreReducedAsMembersNeedThem() {
        assertThat(MovingLight.sizes(List.of(Reduction.of(4, 1), Reduction.of(1, 2)), 120, 60, 100))
                .containsExactly(new Reduction.Size(30, 60), new Reduction.Size(120, 30));
    }

    /** 2000 by 1000 pixels are 2 million; five pictures of it have to be a third as large. */
    @Test
    void largerOnesAreReducedFurtherAlike() {
        List<Reduction.Size> sizes = MovingLight.sizes(List.of(Reduction.of(1, 1), Reduction.of(4, 4)), 2000, 1000, 5);
        double all = 5 * (sizes.get(0).pixels() + sizes.get(1).pixels());
        assertThat(all).isLessThanOrEqualTo(1 << 22).isGreaterThan((1 << 22) / 1.6);
        assertThat(sizes.get(0).columns() / 4.0).isCloseTo(sizes.get(1).columns(), within(1.0));
    }

    /** Six thousand members whose lights are all differently far apart, and a film of five thousand pictures. */
    @Test
    @Timeout(30)
    void anyNumberOfMembersAndPicturesComesToAnEnd() {
        List<Reduction> needs = new ArrayList<>();
        for (int across = 0; across < 80; across++) {
            for (int down = 0; down < 80; down++) {
                needs.add(Reduction.of(StrictMath.pow(2, across / 8.0), StrictMath.pow(2, down / 8.0)));
            }
        }
        List<Reduction.Size> sizes = MovingLight.sizes(needs, 1024, 1024, 5_000);
        assertThat(5_000
                        * sizes.stream()
                                .distinct()
                                .mapToDouble(Reduction.Size::pixels)
                                .sum())
                .isLessThanOrEqualTo(1 << 22);
        assertThat(MovingLight.sizes(needs, 1024, 1024, 1 << 23)).containsOnly(new Reduction.Size(1, 1));
    }
}
