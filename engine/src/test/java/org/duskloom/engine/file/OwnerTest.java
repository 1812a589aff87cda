package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OwnerTest {
    @Test
    void isReadAsItIsWritten() {
        Owner owner = new Owner(4711, 1_750_000_000_123L, "potting-shed_2", 3);
        assertThat(owner.word()).isEqualTo("4711.1750000000123.potting-shed_2.3");
        assertThat(Owner.parse(owner.word())).contains(owner);
        assertThat(Owner.parse(Owner.current().word())).contains(Owner.current());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1.2.a", "1.2.a.", "-1.2.a.3", "1.2.a b.3", "1.2./.3", "1.2.a.9999999999999999999"})
    void anythingElseIsNone(String word) {
        assertThat(Owner.parse(word)).isEmpty();
    }

    @Test
    void thisProcessRuns() {
        assertThat(Owner.current().mayRun()).isTrue();
        assertThat(Owner.current().nobody().mayRun()).isFalse();
    }

    /** Numbers of processes are given again: whoever began at another time is somebody else. */
    @Test
    void aProcessOfTheSameNumberIsSomebodyElse() {
        Owner self = Owner.current();
        Owner before = new Owner(self.process(), self.startMillis() - 3_600_000, self.host(), 0);
        Owner unknown = new Owner(self.process(), 0, self.host(), 0);
        assertThat(before.mayRun()).isFalse();
        assertThat(unknown.mayRun()).isTrue();
    }

    @Test
    void aProcessThatHasEndedRunsNoMore() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(System.getProperty("java.home") + "/bin/java", "-version")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        long start = process.info()
                .startInstant()
                .map(java.time.Instant::toEpochMilli)
                .orElse(0L);
        Owner owner = new Owner(process.pid(), start, Owner.current().host(), 0);
        process.waitFor();
        assertThat(owner.mayRun()).isFalse();
    }
}
