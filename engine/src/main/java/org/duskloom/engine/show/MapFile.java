package org.duskloom.engine.show;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.group.GroupTree;

/**
 * A pixel map with the file it was read from.
 *
 * @param groups the addresses of its props and parts, and the pixels behind them
 * @param inputs the file read
 */
public record MapFile(GroupTree groups, List<InputFile> inputs) {
    public MapFile {
        Objects.requireNonNull(groups, "groups");
        inputs = List.copyOf(inputs);
    }
}
