package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.effect.CueTime;
import org.junit.jupiter.api.Test;

class SharePlaneTest {
    /**
     * A float has 24 digits in binary: from 8 to 16 its last is 2^-20, so 1 - 2^-20 plus any whole number up to 15 is
     * exact, and stays below the next one; of 1 - 2^-24 that could be said of 0 alone.
     */
    @Test
    void lastStaysBelowTheNextWholeNumber() {
        for (int passes = -15; passes <= 15; passes++) {
            assertThat(SharePlane.LAST + passes).isLessThan(passes + 1);
        }
        assertThat(Math.nextDown(1f) + 1f).isEqualTo(2f);
    }

    @Test
    void staysWhereItIsIfFixed() {
        float[] shares = {0, 0.25f, SharePlane.LAST};
        SharePlane plane = SharePlane.fixed(shares);
        plane.begin(new CueTime().set(12.5, 100));
        assertThat(plane.isConstant()).isTrue();
        assertThat(plane.shares()).containsExactly(0, 0.25f, 1 - 0x1p-20f);
        assertThat(SharePlane.fixed(new float[0]).shares()).isEmpty();
    }
}
