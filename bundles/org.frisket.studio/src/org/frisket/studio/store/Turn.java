package org.frisket.studio.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The right of this process to the store's file. Processes take turns, by a lock on a file beside it that falls with the
 * process; threads of one process share a turn. The database's own lock would not do: it is not held while the file is
 * being replaced.
 */
final class Turn implements AutoCloseable {

	private static final Map<Path, Turn> TURNS = new HashMap<>();
	private static final long RETRY_MS = 20;

	private final Path file;
	private final FileChannel channel;
	private final Set<Area> upToDate = new HashSet<>();
	private int users = 1;
	private int waiting;
	private boolean alone;

	private Turn(Path file, FileChannel channel) {
		this.file = file;
		this.channel = channel;
	}

	/** What is done while nobody else uses the store. */
	interface Alone {
		void run() throws IOException;
	}

	/**
	 * Waits for a turn; empty if another process still has it when patience is at its end.
	 *
	 * @throws IOException if the file cannot be made or locked
	 */
	static Optional<Turn> take(Path file, Duration patience) throws IOException {
		long end = System.nanoTime() + patience.toNanos();
		synchronized (TURNS) {
			do {
				Turn turn = TURNS.get(file);
				if (turn == null) {
					Optional<Turn> fresh = lock(file);
					if (fresh.isPresent()) {
						TURNS.put(file, fresh.get());
						return fresh;
					}
				} else if (!turn.alone) {
					turn.users++;
					return Optional.of(turn);
				}
			} while (pause(end));
		}
		return Optional.empty();
	}

	private static Optional<Turn> lock(Path file) throws IOException {
		FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
		FileLock lock = null;
		try {
			lock = channel.tryLock();
		} catch (OverlappingFileLockException somebodyElseHere) {
			// as if it were another process
		} finally {
			if (lock == null) {
				channel.close();
			}
		}
		return lock == null ? Optional.empty() : Optional.of(new Turn(file, channel));
	}

	/** Answers false when it is too late to try again. */
	private static boolean pause(long end) {
		if (System.nanoTime() >= end) {
			return false;
		}
		try {
			TURNS.wait(RETRY_MS);
			return true;
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return false;
		}
	}

	/**
	 * Sees to it, once in a turn, that these areas are up to date, while no other thread has the store open.
	 *
	 * @return whether that could be had before patience was at its end
	 */
	boolean bringUpToDate(Set<Area> areas, Duration patience, Alone work) throws IOException {
		long end = System.nanoTime() + patience.toNanos();
		synchronized (TURNS) {
			if (upToDate.containsAll(areas)) {
				return true;
			}
			waiting++;
			try {
				// Those who wait as well have nothing open.
				while (alone || users > waiting) {
					if (!pause(end)) {
						return false;
					}
				}
				if (upToDate.containsAll(areas)) {
					return true;
				}
				alone = true;
			} finally {
				waiting--;
			}
		}
		boolean done = false;
		try {
			work.run();
			done = true;
		} finally {
			synchronized (TURNS) {
				alone = false;
				if (done) {
					upToDate.addAll(areas);
				}
				TURNS.notifyAll();
			}
		}
		return true;
	}

	@Override
	public void close() throws IOException {
		synchronized (TURNS) {
			if (--users == 0) {
				TURNS.remove(file);
				channel.close();
			}
			TURNS.notifyAll();
		}
	}
}
