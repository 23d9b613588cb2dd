package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.Test;

/** What a bench is given that nobody should give it. */
class BadInputUiTest extends OpenBench {

	private static final int LONG_TEXT = 10_000;
	/** A pause that a person takes for a hang. */
	/** A hang, and no mere pause on a busy machine. */
	private static final long HANG_MS = 5_000;
	private static final long SMALL_DISK_BYTES = 64 << 10;

	private void clip(String text) {
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
	}

	private static String longText() {
		StringBuilder text = new StringBuilder();
		for (int i = 0; text.length() < LONG_TEXT; i++) {
			text.append("Harbour ").append(i).append(i % 6 == 5 ? "\n" : " ");
		}
		return text.substring(0, LONG_TEXT);
	}

	@Test
	void jobOfANewerVersionIsRefusedByNameAndLeftAlone() throws Exception {
		String newer = Files.readString(file).replace("urn:frisket:job:1", "urn:frisket:job:2");
		Path path = Files.writeString(folder.resolve("newer.frjob"), newer);
		BenchEditor editor = open(path);
		Screen.settle();
		assertNull(editor.document());
		assertTrue(editor.trouble().contains("newer.frjob") && editor.trouble().contains("newer Frisket"),
				editor.trouble());
		page().closeEditor(editor, false);
		assertEquals(newer, Files.readString(path));
	}

	@Test
	void tenThousandLettersCanBePastedWhileTheWindowGoesOn() {
		String before = sample.job.getTitle();
		clip(longText());
		Pulse pulse = new Pulse();
		Screen.key("ctrl+v");
		Screen.waitUntil("it is there", () -> wording(bench.document().job()) != null);
		// taken back before it is worked through: nothing waits for it
		Screen.key("ctrl+z");
		Screen.waitUntil("it is gone again", () -> wording(bench.document().job()) == null);
		Screen.waitUntil("the rest is worked through", bench::isUpToDate);
		Screen.key("ctrl+shift+z");
		Screen.waitUntil("all is worked through", bench::isUpToDate);
		assertEquals(LONG_TEXT, wording(bench.document().job()).getText().length());
		assertTrue(pulse.end() < HANG_MS, "the window stood still for " + pulse.end() + " ms");
		assertEquals(before, bench.document().job().getTitle());
	}

	@Test
	void tenThousandLettersCanBePastedIntoWhatIsTyped() {
		Screen.key("Insert");
		Screen.key("T");
		clip(longText());
		Screen.key("ctrl+v");
		Screen.key("e");
		assertEquals(LONG_TEXT + 2, wording(bench.document().job()).getText().length());
		clip(longText() + longText());
		Screen.key("ctrl+v");
		assertTrue(wording(bench.document().job()).getText().length() <= 20_000);
		Screen.key("Escape");
		Screen.key("ctrl+z");
		assertNull(wording(bench.document().job()));
		Screen.waitUntil("it is worked through", bench::isUpToDate);
	}

	private static Wording wording(Job job) {
		return Jobs.elements(job).stream().filter(Wording.class::isInstance).map(Wording.class::cast).findFirst()
				.orElse(null);
	}

	private static long millisSince(long start) {
		return (System.nanoTime() - start) / 1_000_000;
	}

	/** Beats on the UI thread and remembers the longest it had to wait. */
	private static final class Pulse implements Runnable {

		private static final int BEAT_MS = 10;
		private long last = System.nanoTime();
		private long longest;
		private boolean ended;

		Pulse() {
			Display.getCurrent().timerExec(BEAT_MS, this);
		}

		@Override
		public void run() {
			longest = Math.max(longest, millisSince(last) - BEAT_MS);
			last = System.nanoTime();
			if (!ended) {
				Display.getCurrent().timerExec(BEAT_MS, this);
			}
		}

		long end() {
			ended = true;
			return longest;
		}
	}

	@Test
	void wordingWithoutItsFontIsACrossedBoxThatCanBeCured() throws Exception {
		Job job = Jobs.create("HL-8", "Ferry banner");
		Layer layer = Jobs.addLayer(job, "Wording");
		Wording wording = Jobs.addWording(layer, "Ferry", 40);
		wording.setFont(Jobs.font("Harbour Lane Grotesk", "Regular", "00", "/nowhere/harbour.ttf"));
		wording.setTransform(Matrix.translation(20, 80));
		Jobs.addOperation(wording, OperationKind.CUT);
		Path path = folder.resolve("font.frjob");
		JobFile.save(job, path);
		String before = Files.readString(path);
		bench = open(path);
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		listen(bench);
		ImageData picture = Screen.picture(canvas());
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "font-missing");
		Point corner = pixelOf(20, 80);
		Point top = pixelOf(20, 40);
		assertTrue(Stream.iterate(top.y, y -> y < corner.y, y -> y + 1)
				.filter(y -> isReddish(Screen.pixel(picture, corner.x - 1, y))
						|| isReddish(Screen.pixel(picture, corner.x, y))).count() > (corner.y - top.y) / 4);
		assertEquals("font-missing", bench.document().picture().findings().get(0).id());
		assertEquals(0, bench.document().picture().pieces());
		Point line = pixelOf(20, 60);
		Screen.click(canvas(), line.x, line.y);
		assertEquals(List.of(wording.getId()), selectedIds());
		bench.doSave(new NullProgressMonitor());
		assertEquals(before, Files.readString(path));
	}

	/** A thin line may share its colour with the pixels beside it. */
	private static boolean isReddish(RGB seen) {
		return seen.red - seen.green > 50 && seen.red - seen.blue > 50;
	}

	@Test
	void fullDiskLosesNothingAndOffersAnotherPlace() throws Exception {
		Path disk = Files.createDirectory(folder.resolve("disk"));
		assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=" + SMALL_DISK_BYTES, "tmpfs", disk.toString()),
				"only root can make a small disk");
		try {
			Path place = disk.resolve("sample.frjob");
			bench.saveTo(place, new NullProgressMonitor());
			String saved = Files.readString(place);
			Path filler = fill(disk);
			edits().execute(new RenameLayer(bench.document().job().getLayers().get(0), "Sand card"));
			NullProgressMonitor monitor = new NullProgressMonitor();
			List<String> read = Dialogs.answer("Cancel", () -> bench.doSave(monitor));
			assertTrue(read.stream().anyMatch(text -> text.contains("Nothing is lost") && text.contains("sample.frjob")
					&& text.contains("space")), read::toString);
			assertTrue(read.contains("Save As…"), read::toString);
			assertTrue(monitor.isCanceled());
			assertTrue(bench.isDirty());
			assertEquals(saved, Files.readString(place));
			try (Stream<Path> files = Files.list(disk)) {
				assertEquals(Set.of(place, filler), files.collect(Collectors.toSet()));
			}
			Path elsewhere = folder.resolve("elsewhere.frjob");
			Dialogs.typeIntoNext("Save Job", elsewhere.toString());
			Dialogs.answer("Save As…", () -> bench.doSave(new NullProgressMonitor()));
			assertFalse(bench.isDirty());
			assertEquals(text(bench.document().job()), Files.readString(elsewhere));
		} finally {
			page().closeAllEditors(false);
			run("umount", disk.toString());
			Files.delete(disk);
		}
	}

	/** Takes all the room there is. */
	private static Path fill(Path disk) throws IOException {
		Path filler = disk.resolve("filler");
		try (OutputStream out = Files.newOutputStream(filler)) {
			for (int i = 0; i < SMALL_DISK_BYTES; i++) {
				out.write(i);
			}
		} catch (IOException e) {
			// full, as it should be
		}
		return filler;
	}

	private static boolean run(String... command) throws IOException, InterruptedException {
		return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
	}

	@Test
	void whatACrashLeftBesideAJobIsGoneWhenItIsOpened() throws Exception {
		Path left = Files.writeString(folder.resolve(".sample.frjob.0.part"), "<half");
		Path other = Files.writeString(folder.resolve(".other.frjob.0.part"), "<half");
		for (Path part : List.of(left, other)) {
			Files.setLastModifiedTime(part, FileTime.from(Instant.now().minusSeconds(3600)));
		}
		page().closeAllEditors(false);
		bench = open(file);
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		assertFalse(Files.exists(left));
		assertTrue(Files.exists(other));
	}
}
