package org.duskloom.engine.survey;

import java.util.List;

/**
 * Props that hang in each other's places.
 *
 * @param props their names: the first hangs where the second is described, and so on, the last where the first is
 */
public record Exchange(List<String> props) {
    public Exchange {
        props = List.copyOf(props);
    }
}
