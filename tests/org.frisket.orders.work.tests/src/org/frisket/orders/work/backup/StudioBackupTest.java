package org.frisket.orders.work.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.archive.ArchiveException;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A backup comes in the place of what is there, which is kept; or nothing at all happens. */
class StudioBackupTest extends BothDatabases {

	private static final Clock NOON = Clock.fixed(Instant.parse("2031-05-12T12:04:00Z"), ZoneOffset.UTC);

	@TempDir
	Path outside;

	private StudioFolder studio;
	private Path file;

	@BeforeEach
	void file() {
		file = outside.resolve("harbour.zip");
	}

	private OrderBook book() {
		return new OrderBook(studio);
	}

	private Entry add(String title) throws Exception {
		return book().add(new NewOrder(title, "Tern Bookshop", Optional.empty(), 1, ""), "Ottoline");
	}

	private List<String> titles() throws Exception {
		return book().list(10).stream().map(Entry::title).toList();
	}

	private StudioBackup backup() {
		return new StudioBackup(studio, NOON);
	}

	private List<Path> kept() throws IOException {
		try (Stream<Path> all = Files.list(studio.path().toAbsolutePath().getParent())) {
			return all.filter(each -> each.getFileName().toString().contains("before-restore")).toList();
		}
	}

	/** A backup of one job, and another job in its place. */
	private void open(boolean shared) throws Exception {
		studio = emptyStudio(shared);
		add("Ferry banner");
		backup().write(file, null);
		add("Place cards");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatABackupAndTheBookHaveIsSaidBeforehand(boolean shared) throws Exception {
		studio = emptyStudio(shared);
		assertEquals(new BookContents(0, Optional.empty(), true), backup().here());
		Entry banner = add("Ferry banner");
		backup().write(file, null);
		Entry cards = add("Place cards");
		assertEquals(new BookContents(1, Optional.of(banner.changed()), false), backup().in(file, null));
		assertEquals(new BookContents(2, Optional.of(cards.changed()), false), backup().here());
		assertEquals(List.of("Place cards", "Ferry banner"), titles());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatWasThereIsKeptAndComesBackInTurn(boolean shared) throws Exception {
		open(shared);
		Restored first = backup().restore(file, true, null);
		assertEquals(List.of("Ferry banner"), titles());
		Path before = first.kept().orElseThrow();
		assertEquals(studio.path().getFileName() + "-before-restore-2031-05-12-1204.zip", before.getFileName().toString());
		Restored second = backup().restore(before, true, null);
		assertEquals(List.of("Place cards", "Ferry banner"), titles());
		assertTrue(second.kept().orElseThrow().toString().endsWith("-1204-1.zip"), "the one before stays");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void nothingIsKeptOfAnEmptyStudioAndNothingReplacedUnasked(boolean shared) throws Exception {
		open(shared);
		assertThrows(ArchiveException.class, () -> backup().restore(file, false, null));
		assertEquals(2, titles().size());
		emptyStudio(shared);
		studio = new StudioFolder(home.resolve("other"));
		assertEquals(Optional.empty(), backup().restore(file, true, null).kept());
		assertEquals(List.of("Ferry banner"), titles());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsRefusedOrCalledOffLeavesAllAsItWasAndNoFile(boolean shared) throws Exception {
		open(shared);
		Path damaged = outside.resolve("damaged.zip");
		byte[] bytes = Files.readAllBytes(file);
		Files.write(damaged, java.util.Arrays.copyOf(bytes, bytes.length / 2));
		String told = assertThrows(ArchiveException.class, () -> backup().in(damaged, null)).getMessage();
		assertEquals(told, assertThrows(ArchiveException.class, () -> backup().restore(damaged, true, null)).getMessage());
		NullProgressMonitor calledOff = new NullProgressMonitor();
		calledOff.setCanceled(true);
		assertThrows(OperationCanceledException.class, () -> backup().restore(file, true, calledOff));
		assertThrows(OperationCanceledException.class, () -> backup().write(outside.resolve("off.zip"), calledOff));
		assertThrows(OperationCanceledException.class, () -> backup().in(file, calledOff));
		assertFalse(Files.exists(outside.resolve("off.zip")));
		assertEquals(2, titles().size());
		assertEquals(List.of(), kept());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void calledOffAmongTheTablesTakesAllBack(boolean shared) throws Exception {
		open(shared);
		// so late that the rows are being replaced
		NullProgressMonitor late = new NullProgressMonitor() {

			@Override
			public boolean isCanceled() {
				return StackWalker.getInstance().walk(frames -> frames
						.anyMatch(frame -> frame.getClassName().endsWith("ArchivedTables") && frame.getMethodName().equals("restore")));
			}
		};
		assertThrows(OperationCanceledException.class, () -> backup().restore(file, true, late));
		assertEquals(2, titles().size());
		assertEquals(List.of(), kept());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whereWhatWasThereIsKeptIsToldIfTheFilesFail(boolean shared) throws Exception {
		studio = emptyStudio(shared);
		add("Ferry banner");
		Files.createDirectories(studio.fonts());
		Files.writeString(studio.fonts().resolve("own.ttf"), "not really");
		backup().write(file, null);
		Files.delete(studio.fonts().resolve("own.ttf"));
		// in the place of the font
		Files.createDirectories(studio.fonts().resolve("own.ttf").resolve("full"));
		IOException told = assertThrows(IOException.class, () -> backup().restore(file, true, null));
		assertTrue(told.getMessage().contains("own.ttf") && told.getMessage().contains(kept().get(0).toString()),
				told.getMessage());
	}
}
