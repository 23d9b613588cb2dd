package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.Composition;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.JobFonts;
import org.frisket.prepare.fonts.JobFonts.Kept;
import org.frisket.prepare.fonts.JobFonts.NotKept;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.StudioFontSource;
import org.frisket.typography.FontFace;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reorder is the same as the order, whatever has become of the font. */
class JobFontsTest {

	@TempDir
	Path folder;

	private final FontLibrary library = new FontLibrary(List.of(new StudioFontSource(), new EmbeddedFontSource()));
	private StudioFolder studio;
	private Path file;

	@BeforeEach
	void chooseStudio() throws Exception {
		studio = new StudioFolder(folder.resolve("studio"));
		Studio.choose(Optional.of(studio.path()));
		studio.open();
		file = Files.write(studio.fonts().resolve("ferry.ttf"), marked("Liberation Serif"));
	}

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	/** Not of the same content as the product's own. */
	private static byte[] marked(String name) throws Exception {
		byte[] bytes = new FontLibrary(List.of(new EmbeddedFontSource())).find(name).bytes();
		return Arrays.copyOf(bytes, bytes.length + 4);
	}

	private Job job() throws Exception {
		return job(FontFace.read(file));
	}

	private static Job job(FontFace face) {
		return new Composition("Harbour Lane", face, 30, Alignment.LEFT,
				OptionalDouble.empty(), List.of(), OperationKind.CUT).toJob();
	}

	private record Result(List<Region> regions, List<String> findings) {
	}

	private Result result(Job job) {
		PreparedJob prepared = new JobPreparer(library).prepare(job, Tolerance.DEFAULT, Monitor.NONE);
		return new Result(prepared.elements().map(PreparedElement::region).toList(),
				Makeready.findings(prepared, Limits.CARD, Tolerance.DEFAULT, Monitor.NONE).stream().map(Finding::id).toList());
	}

	@Test
	void jobIsTheSameAfterItsFontHasChangedOrGone() throws Exception {
		Job job = job();
		Result order = result(job);
		assertEquals(1, JobFonts.keep(job, library, studio).count());
		assertEquals(0, JobFonts.keep(job, library, studio).count(), "once is enough");
		Files.write(file, marked("Liberation Mono"));
		assertEquals(order, result(job));
		Files.delete(file);
		assertEquals(order, result(job));
		// another name is no way out: it is the content that counts
		Jobs.elements(job).forEach(element -> ((Wording) element).getFont().setName("Ferry"));
		assertEquals(order.regions(), result(job).regions());
	}

	@Test
	void withoutItTheJobSaysThatTheFontIsAnother() throws Exception {
		Job job = job();
		Result order = result(job);
		Files.write(file, marked("Liberation Mono"));
		Result reorder = result(job);
		assertNotEquals(order.regions(), reorder.regions());
		assertTrue(reorder.findings().contains("font-differs"), reorder.findings().toString());
		assertEquals(0, JobFonts.keep(job, library, studio).count(), "the font it was made with is not at hand any more");
	}

	@Test
	void studioThatCannotBeUsedIsTold() throws Exception {
		Path letter = Files.writeString(folder.resolve("letter"), "Dear customer");
		Kept kept = JobFonts.keep(job(), library, new StudioFolder(letter));
		assertEquals(0, kept.count());
		assertEquals(List.of("Liberation Serif Regular"), kept.failed().stream().map(NotKept::font).toList());
		assertEquals(letter, kept.failed().get(0).folder());
		assertFalse(kept.failed().get(0).reason().isBlank());
	}

	@Test
	void fontThatCannotBeWrittenIsNamedAndDoesNotHoldUpTheOthers() throws Exception {
		Job job = job();
		Path second = Files.write(studio.fonts().resolve("mono.ttf"), marked("Liberation Mono"));
		Wording other = (Wording) Jobs.elements(job(FontFace.read(second))).get(0);
		job.getLayers().get(0).getElements().add(other);
		String digest = ((Wording) Jobs.elements(job).get(0)).getFont().getDigest();
		// where its file would lie there is a folder, as root may write anywhere
		Files.createDirectories(studio.keptFonts().folder().resolve(digest + ".font"));
		Kept kept = JobFonts.keep(job, library, studio);
		assertEquals(1, kept.count());
		NotKept failed = kept.failed().get(0);
		assertEquals(List.of("Liberation Serif Regular", digest, studio.keptFonts().folder()),
				List.of(failed.font(), failed.digest(), failed.folder()));
		assertTrue(failed.reason().contains("folder"), failed.reason());
		assertTrue(studio.keptFonts().has(other.getFont().getDigest()));
	}

	@Test
	void namedInstanceOfAVariableFontStaysWhatItIs() throws Exception {
		Path inter = Path.of("/usr/share/fonts/truetype/inter-vf/Inter-roman.var.ttf");
		assumeTrue(Files.exists(inter), () -> inter + " is not installed");
		Files.copy(inter, studio.fonts().resolve("inter.ttf"));
		FontEntry bold = library.sources().get(0).fonts(Monitor.NONE).stream()
				.filter(font -> font.instance().equals("Bold")).findFirst().orElseThrow();
		Job job = job(bold.open());
		assertNotEquals(result(job(library.find(bold.family()))).regions(), result(job).regions(),
				"the style counts, not only the file");
		assertEquals(1, JobFonts.keep(job, library, studio).count());
		Result order = result(job);
		Files.delete(studio.fonts().resolve("inter.ttf"));
		assertEquals(order, result(job));
	}
}
