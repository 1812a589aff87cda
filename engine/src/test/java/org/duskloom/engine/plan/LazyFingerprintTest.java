package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.junit.jupiter.api.Test;

class LazyFingerprintTest {
    @Test
    void isPutTogetherOnceAndOnlyWhenAskedFor() {
        AtomicInteger times = new AtomicInteger();
        Supplier<Fingerprint> make = () ->
                new FingerprintWriter("daisy/1").whole(times.incrementAndGet()).finish();
        LazyFingerprint fingerprint = new LazyFingerprint();
        assertThat(times).hasValue(0);

        Fingerprint first = fingerprint.madeBy(make);

        assertThat(fingerprint.madeBy(make)).isSameAs(first);
        assertThat(times).hasValue(1);
    }
}
