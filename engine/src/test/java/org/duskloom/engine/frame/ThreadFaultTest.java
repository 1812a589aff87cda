package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class ThreadFaultTest {
    @Test
    void isTheVeryOneThatTheOtherThreadThrew() {
        IOException disk = new IOException("the disk is full");
        RuntimeException slip = new IllegalStateException("a slip");
        Error memory = new OutOfMemoryError("no more");

        assertThat(ThreadFault.of(disk)).isSameAs(disk);
        assertThatThrownBy(() -> ThreadFault.of(memory)).isSameAs(memory);
        assertThatThrownBy(() -> {
                    throw ThreadFault.of(slip);
                })
                .isSameAs(slip);
        assertThat(ThreadFault.unchecked(slip)).isSameAs(slip);
        assertThatThrownBy(() -> ThreadFault.unchecked(memory)).isSameAs(memory);
    }
}
