package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

import javax.imageio.ImageIO;

import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.page.flow.FlowedPages;
import org.frisket.prepare.layout.Paper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The proof as poppler reads and paints it. */
class ProofTest {

	/** 10 pixels to a mm. */
	private static final int DPI = 254;
	private static final int BLUE = Integer.decode(SamplePapers.BLUE);

	private static Locale usual;

	@TempDir
	private Path folder;

	@BeforeAll
	static void inEnglish() {
		usual = Locale.getDefault();
		Locale.setDefault(Locale.ENGLISH);
	}

	@AfterAll
	static void giveTheLanguageBack() {
		Locale.setDefault(usual);
	}

	private static byte[] proof(Job job, PaperForm form) throws Exception {
		JobWork work = SamplePapers.work(job);
		return SamplePapers.bytes(out -> Proof.write(work, form, out));
	}

	private static Job plate(double width, double height) {
		Job job = Jobs.create("plate", "Name plate");
		job.setNumber("31");
		SamplePapers.outline(job, "Harbour blue", SamplePapers.BLUE, "harbour-blue", "Plate",
				"M5 7h%sv%sh-%sz".formatted(width, height, width));
		return job;
	}

	/**
	 * Width and height of the first blue piece from above, which is the picture, the width of the page, and where the piece
	 * begins, in mm.
	 */
	private double[] shown(byte[] pdf) throws Exception {
		BufferedImage image = ImageIO.read(SamplePapers.pictures(pdf, DPI, folder).get(0).toFile());
		int left = image.getWidth();
		int right = -1;
		int top = -1;
		int bottom = -1;
		for (int y = 0; y < image.getHeight(); y++) {
			boolean any = false;
			for (int x = 0; x < image.getWidth(); x++) {
				if ((image.getRGB(x, y) & 0xffffff) == BLUE) {
					any = true;
					left = Math.min(left, x);
					right = Math.max(right, x);
				}
			}
			if (any) {
				top = top < 0 ? y : top;
				bottom = y;
			} else if (top >= 0) {
				break;
			}
		}
		return new double[] { (right - left + 1) / 10.0, (bottom - top + 1) / 10.0, image.getWidth() / 10.0, left / 10.0, top / 10.0 };
	}

	@Test
	void whatFitsIsShownAtItsTrueSize() throws Exception {
		byte[] pdf = proof(SamplePapers.tags(), SamplePapers.A4);
		SamplePapers.check(pdf, folder);
		double[] size = shown(pdf);
		// the cut's line, 0.2 mm wide, covers half of its width inside
		assertEquals(80 - 0.2, size[0], 0.25);
		assertEquals(50 - 0.2, size[1], 0.25);
		String text = SamplePapers.words(pdf, folder);
		for (String word : new String[] { "10247", "Gift tags for the harbour fair", "Tern Bookshop", "Monday, March 1, 2027",
				"80 mm", "50 mm", "true size", "Harbour blue · Harbour blue 216 g", "Colours on a screen", "Name", "Date",
				"Signature", "page 1 of 1" }) {
			assertTrue(text.contains(word), word + " in " + text);
		}
	}

	@Test
	void whatFitsALyingPageOnlyIsShownOnOne() throws Exception {
		double[] size = shown(proof(plate(250, 60), SamplePapers.A4));
		assertEquals(250 - 0.2, size[0], 0.25);
		assertEquals(297, size[2], 0.2);
	}

	@Test
	void whatIsTooLargeIsShownAtAStatedScale() throws Exception {
		byte[] pdf = proof(plate(600, 300), SamplePapers.A4);
		double[] size = shown(pdf);
		String text = SamplePapers.words(pdf, folder);
		assertTrue(text.contains("Shown at 1 : 3"), text);
		assertEquals(600 / 3.0 - 0.2, size[0], 0.25);
		assertTrue(text.contains("600 mm") && text.contains("300 mm"), text);
	}

	@Test
	void lengthsAreInInchesWhereTheStudioPrefersThem() throws Exception {
		String text = SamplePapers.words(proof(plate(101.6, 50.8), new PaperForm(Paper.LETTER, true, SamplePapers.A4.zone())),
				folder);
		assertTrue(text.contains("4 in") && text.contains("2 in"), text);
	}

	@Test
	void printedPictureStandsUprightAtItsSize() throws Exception {
		BufferedImage pixels = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
		for (int y = 0; y < 40; y++) {
			for (int x = 0; x < 60; x++) {
				pixels.setRGB(x, y, y < 20 && x < 30 ? BLUE : 0xe8dcc0);
			}
		}
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		ImageIO.write(pixels, "png", file);
		Job job = Jobs.create("picture", "Ferry picture");
		Jobs.addPicture(Jobs.addLayer(job, "Print"), ImageBytes.of(file.toByteArray()), "image/png", 90, 60);
		byte[] pdf = proof(job, SamplePapers.A4);
		SamplePapers.check(pdf, folder);
		double[] size = shown(pdf);
		assertEquals(45, size[0], 1.6, "the left half, but for what is mixed at its edge");
		assertEquals(30, size[1], 1.6, "the upper half");
		assertEquals(FlowedPages.MARGIN, size[3], 0.3, "at the left of the picture");
		BufferedImage page = ImageIO.read(SamplePapers.pictures(pdf, DPI, folder).get(0).toFile());
		int below = (int) ((size[4] + 45) * 10);
		assertEquals(0xe8dcc0, page.getRGB((int) (FlowedPages.MARGIN * 10) + 100, below) & 0xffffff, "the other half is below");
	}

	@Test
	void nothingDesignedIsSaid() throws Exception {
		byte[] pdf = proof(Jobs.create("none", "Ferry banner"), SamplePapers.A4);
		SamplePapers.check(pdf, folder);
		assertTrue(SamplePapers.words(pdf, folder).contains("There is nothing to show yet."));
	}

	/** Whoever sorts documents by their id must not take a proof for that before the change. */
	@Test
	void changedArtworkOfTheSameSizeIsAnotherDocument() throws Exception {
		Job notched = plate(80, 50);
		((Outline) notched.getLayers().get(0).getElements().get(0)).setPathData("M5 7h80v50h-80v-20h5v-10h-5z");
		assertNotEquals(id(proof(plate(80, 50), SamplePapers.A4)), id(proof(notched, SamplePapers.A4)));
	}

	private static String id(byte[] pdf) {
		String text = new String(pdf, StandardCharsets.ISO_8859_1);
		int at = text.indexOf("/ID [");
		assertTrue(at >= 0);
		return text.substring(at, text.indexOf(']', at));
	}

	@Test
	void sameJobMakesTheSameBytes() throws Exception {
		assertArrayEquals(proof(SamplePapers.tags(), SamplePapers.A4), proof(SamplePapers.tags(), SamplePapers.A4));
	}
}
