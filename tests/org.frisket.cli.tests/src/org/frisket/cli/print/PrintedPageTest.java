package org.frisket.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.cli.Frisket;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.model.Sheet;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.print.picture.PictureFile;
import org.frisket.studio.Studio;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page of a PDF with a shape and words on it, all the way from the file to print and cut. */
class PrintedPageTest {

	/** The second page has 60 by 40 mm, and a label of 40 by 20 mm, 10 mm from the left and from the lower edge. */
	private static final double MM = 72 / 25.4;
	private static final Bounds LABEL = new Bounds(10, 10, 50, 30);
	private static final double NEAR = 0.01;
	/** Half a pixel of the 1200 to the inch in which so small a page is traced, and a little for fitted curves. */
	private static final double TRACED = 0.5 * 25.4 / 1200 + 0.001;
	/** The pixels of art that is looked at, to the mm. */
	private static final int PER_MM = 20;
	private static final double SEEN = 0.3 / PER_MM;

	@TempDir
	private Path folder;

	private String run(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		assertEquals(0, status, out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8));
		return out.toString(StandardCharsets.UTF_8);
	}

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	private static String page(int number, double width, double height, String content) {
		return number + " 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 " + width * MM + " " + height * MM + "]/Resources"
				+ "<</Font<</F 7 0 R>>>>/Contents " + (number + 2) + " 0 R>> endobj\n" + (number + 2) + " 0 obj <</Length "
				+ content.length() + ">> stream\n" + content + "\nendstream endobj\n";
	}

	/** Without a table of what is where, which readers make up for. */
	private Path leaf() throws IOException {
		String label = "0.1 0.1 0.5 rg " + 10 * MM + " " + 10 * MM + " " + 40 * MM + " " + 20 * MM
				+ " re f BT /F 20 Tf 1 g 60 50 Td (Quay) Tj ET";
		Path file = folder.resolve("leaf.pdf");
		Files.writeString(file, "%PDF-1.4\n1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj\n"
				+ "2 0 obj <</Type/Pages/Kids[3 0 R 4 0 R]/Count 2>> endobj\n" + page(3, 100, 100, "0 g 0 0 9 9 re f")
				+ page(4, 60, 40, label) + "7 0 obj <</Type/Font/Subtype/Type1/BaseFont/Helvetica>> endobj\n"
				+ "trailer <</Root 1 0 R>>\n%%EOF\n", StandardCharsets.ISO_8859_1);
		return file;
	}

	/** A job of the page, cut along its art, and a mat behind it. */
	private Path job() throws IOException {
		Path file = folder.resolve("leaf.frjob");
		String said = run("import", leaf().toString(), "--page", "2", "--out", file.toString());
		assertTrue(said.contains("2") && said.contains("page 2 of 2"), said);
		Job job = JobFile.load(file);
		Picture picture = (Picture) Jobs.elements(job).get(0);
		assertEquals("application/pdf;page=2", picture.getMediaType());
		assertEquals(60, picture.getWidth(), NEAR);
		assertEquals(40, picture.getHeight(), NEAR);
		picture.setEdge(FrisketFactory.INSTANCE.createPictureEdge());
		Jobs.addOperation(picture, OperationKind.CUT);
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(picture));
		Jobs.addOperation(mat, OperationKind.CUT);
		JobFile.save(job, file);
		return file;
	}

	private static void assertNear(Bounds expected, Bounds actual, double by) {
		String both = expected + " " + actual;
		assertEquals(expected.minX(), actual.minX(), by, both);
		assertEquals(expected.minY(), actual.minY(), by, both);
		assertEquals(expected.maxX(), actual.maxX(), by, both);
		assertEquals(expected.maxY(), actual.maxY(), by, both);
	}

	/** Around the label where it is printed, in mm; its edges are sums of what is covered across them. */
	private static Bounds printed(Path pdf) throws Exception {
		PictureFile file = PictureFile.of(pdf);
		BufferedImage image = file.image((int) Math.round(file.trueWidth() * PER_MM), Monitor.NONE);
		int[] box = { Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1 };
		for (int y = 0; y < image.getHeight(); y++) {
			for (int x = 0; x < image.getWidth(); x++) {
				if (isLabel(image.getRGB(x, y))) {
					box[0] = Math.min(box[0], x);
					box[1] = Math.min(box[1], y);
					box[2] = Math.max(box[2], x);
					box[3] = Math.max(box[3], y);
				}
			}
		}
		// beside the words
		int row = box[3] - PER_MM;
		int column = box[0] + PER_MM;
		double x = image.getWidth() / file.trueWidth();
		double y = image.getHeight() / file.trueHeight();
		return new Bounds((box[0] + PER_MM - covered(image, box[0], row, 1, 0)) / x,
				(box[1] + PER_MM - covered(image, column, box[1], 0, 1)) / y,
				(box[2] - PER_MM + covered(image, box[2], row, 1, 0)) / x,
				(box[3] - PER_MM + covered(image, column, box[3], 0, 1)) / y);
	}

	private static boolean isLabel(int pixel) {
		int blue = pixel & 0xff;
		return pixel >>> 24 > 250 && (pixel >> 16 & 0xff) < 60 && (pixel >> 8 & 0xff) < 60 && blue > 110 && blue < 145;
	}

	/** Pixels from a mm before a place to a mm behind it, as far as they are inked. */
	private static double covered(BufferedImage image, int x, int y, int stepX, int stepY) {
		double sum = 0;
		for (int i = -PER_MM; i < PER_MM; i++) {
			sum += (image.getRGB(x + i * stepX, y + i * stepY) >>> 24) / 255.0;
		}
		return sum;
	}

	private static Bounds path(String svg, int number) {
		Matcher matcher = Pattern.compile("<path[^>]* d=\"([^\"]+)\"").matcher(svg);
		for (int i = 0; i <= number; i++) {
			assertTrue(matcher.find(), svg.substring(0, Math.min(svg.length(), 2000)));
		}
		return PathData.parse(matcher.group(1)).bounds();
	}

	@Test
	void contourMatFilesAndPrintAgree() throws Exception {
		Path file = job();
		PreparedJob prepared = new JobPreparer(FontLibraries.installed()).prepare(JobFile.load(file), Tolerance.DEFAULT,
				Monitor.NONE);
		List<Bounds> regions = prepared.elements().map(element -> element.region().bounds()).toList();
		assertNear(LABEL, regions.get(0), TRACED);
		assertNear(LABEL.grown(3), regions.get(1), TRACED);

		Path svg = folder.resolve("leaf.svg");
		run("export", file.toString(), "--out", svg.toString());
		String text = Files.readString(svg);
		assertTrue(text.contains("xlink:href=\"data:image/png;base64,"), "no reader of SVG has to know PDF");
		double[] sizes = { path(text, 0).width(), path(text, 1).width() };
		assertEquals(40, Math.min(sizes[0], sizes[1]), 2 * TRACED);
		assertEquals(46, Math.max(sizes[0], sizes[1]), 2 * TRACED);

		// without the lines of the blade, which cover its edge
		Job print = JobFile.load(file);
		print.getLayers().remove(1);
		Jobs.elements(print).get(0).getOperations().remove(1);
		JobFile.save(print, file);
		Path pdf = folder.resolve("out.pdf");
		run("export", file.toString(), "--out", pdf.toString());
		assertFalse(Files.readString(pdf, StandardCharsets.ISO_8859_1).contains("/Subtype /Image"), "vectors stay vectors");
		assertTrue(Files.readString(pdf, StandardCharsets.ISO_8859_1).contains("/Subtype /Form"));
		Bounds printed = printed(pdf);
		assertEquals(40, printed.width(), 2 * SEEN);
		assertEquals(20, printed.height(), 2 * SEEN);
	}

	@Test
	void printedSheetAndItsCutAgree() throws Exception {
		Path file = job();
		Job job = JobFile.load(file);
		Picture picture = (Picture) Jobs.elements(job).get(0);
		job.getLayers().remove(1);
		Sheet sheet = Jobs.addSheet(job, null, 200, 150);
		Jobs.addPlacement(sheet, picture.getId(), 100, 75, 0);
		JobFile.save(job, file);
		Path out = folder.resolve("out");
		run("print-and-cut", file.toString(), "--out", out.toString(), "--studio", folder.resolve("studio").toString(),
				"--bleed", "0mm");
		Path print;
		Path cut;
		try (var files = Files.list(out)) {
			List<Path> all = files.toList();
			print = all.stream().filter(each -> each.toString().endsWith(".pdf")).findFirst().orElseThrow();
			cut = all.stream().filter(each -> each.toString().endsWith(".svg")).findFirst().orElseThrow();
		}
		assertNear(path(Files.readString(cut), 0), printed(print), TRACED + SEEN);
	}

	@Test
	void linkedPicturesEnterTheOrderBook() throws Exception {
		Path file = folder.resolve("linked.frjob");
		leaf();
		Job job = Jobs.create("job", "Leaf");
		Picture picture = Jobs.addPicture(Jobs.addLayer(job, "Art"), null, null, 60, 40);
		picture.setLink("leaf.pdf#page=2");
		JobFile.save(job, file);
		String studio = folder.resolve("studio").toString();
		String number = run("orders", "--studio", studio, "import", file.toString()).strip();
		Path back = folder.resolve("away.frjob");
		run("orders", "--studio", studio, "export", number, "--out", back.toString());
		Picture taken = (Picture) Jobs.elements(JobFile.load(back)).get(0);
		assertEquals(ImageBytes.of(Files.readAllBytes(folder.resolve("leaf.pdf"))), taken.getImage());
		assertEquals("application/pdf;page=2", taken.getMediaType());
		assertNull(taken.getLink());
	}
}
