package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DaemonThreadsTest {
    @Test
    void keepNoProgramFromEndingAndHaveTheName() {
        Thread thread = new DaemonThreads("tiles").newThread(() -> {});
        assertThat(thread.isDaemon()).isTrue();
        assertThat(thread.getName()).isEqualTo("tiles");
    }
}
