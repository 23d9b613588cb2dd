package org.frisket.orders.work.backup;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What came of bringing a backup back.
 *
 * @param rows how many were put into tables
 * @param kept the file with all that was there before, which can be brought back in turn; empty if there was nothing
 */
public record Restored(long rows, Optional<Path> kept) {
}
