package org.frisket.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;

import javax.imageio.ImageIO;

import org.frisket.export.Handoff;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.model.Sheet;
import org.frisket.prepare.Composition;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.Workshop;
import org.frisket.sheets.LaidSheets;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.RunChoices;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file as qpdf and poppler see it, which are no part of this project. */
class PdfReadBackTest {

	private static final double MM2_PER_UNIT2 = 25.4 / 72 * 25.4 / 72;
	private static final int PIXELS_PER_MM = 10;

	@TempDir
	private Path folder;

	private Qpdf read(byte[] pdf) throws Exception {
		return Qpdf.read(pdf, folder);
	}

	private Path file(byte[] pdf) throws Exception {
		return Files.write(folder.resolve("out.pdf"), pdf);
	}

	private String facts(byte[] pdf) throws Exception {
		return new String(Qpdf.output("pdfinfo", "-box", file(pdf).toString()), StandardCharsets.UTF_8);
	}

	private BufferedImage picture(byte[] pdf, String... options) throws Exception {
		List<String> command = new ArrayList<>(List.of("pdftocairo", "-png", "-singlefile", "-r",
				Double.toString(PIXELS_PER_MM * 25.4)));
		command.addAll(List.of(options));
		command.addAll(List.of(file(pdf).toString(), "-"));
		return ImageIO.read(new ByteArrayInputStream(Qpdf.output(command.toArray(String[]::new))));
	}

	@Test
	void areasAndCurvesAreThoseOfTheRegions() throws Exception {
		Job lettering = new Composition("Harbour Lane & Co", SampleJobs.face("DejaVu Serif"), 25, Alignment.LEFT,
				OptionalDouble.of(0.3), List.of(4.0), OperationKind.CUT).toJob();
		for (Job job : List.of(lettering, SampleJobs.giftTag(), shapes(new Random(20261130)))) {
			PreparedJob prepared = SampleJobs.prepared(job);
			List<Painted> painted = Painted.of(read(PdfExporterTest.written(Handoff.of(prepared), Map.of())).content());
			List<PreparedElement> elements = prepared.elements().toList();
			assertEquals(elements.size(), painted.size());
			for (int i = 0; i < painted.size(); i++) {
				PreparedElement element = elements.get(i);
				double area = element.region().area();
				// y points the other way, and so does the way round
				assertEquals(area, Math.abs(painted.get(i).area()) * MM2_PER_UNIT2, 1e-5 * area + 1e-3);
				assertEquals(element.region().contours().size(), painted.get(i).closed());
				assertEquals(element.region().contours().stream().map(Contour::segments).flatMap(List::stream)
						.filter(Cubic.class::isInstance).count(), painted.get(i).curves());
			}
		}
	}

	/** Rings and lenses of curves, anywhere. */
	private static Job shapes(Random random) {
		Job job = Jobs.create("job", "Shapes");
		Layer layer = Jobs.addLayer(job, "Card");
		for (int i = 0; i < 60; i++) {
			double r = 1 + 20 * random.nextDouble();
			String start = "M" + (2000 * random.nextDouble() - 1000) + " " + (2000 * random.nextDouble() - 1000);
			String ring = start + "a" + r + " " + r + " 0 0 1 " + 2 * r + " 0a" + r + " " + r + " 0 0 1 " + -2 * r + " 0z";
			String lens = "m" + r / 2 + " 0q" + r / 2 + " " + r * random.nextDouble() + " " + r + " 0q" + -r / 2 + " " + -r / 3
					+ " " + -r + " 0z";
			Jobs.addOperation(Jobs.addOutline(layer, i % 2 == 0 ? ring : ring + lens), OperationKind.CUT);
		}
		return job;
	}

	@Test
	void pageOfASheetIsTheSheet() throws Exception {
		Job job = SampleJobs.outline("M0 0H100V50H0Z", OperationKind.CUT);
		Sheet sheet = Jobs.addSheet(job, null, 305, 210);
		Jobs.addPlacement(sheet, Jobs.elements(job).get(0).getId(), 60, 35, 0);
		byte[] pdf = PdfExporterTest.written(Handoff.of(LaidSheets.of(job, Map.of(job.getId(), SampleJobs.prepared(job)),
				Tolerance.DEFAULT, Monitor.NONE).get(0), Workshop.plain(), RunChoices.plain()), Map.of("line-width", "0.2mm"));
		String facts = facts(pdf);
		// 305 mm and 210 mm in 1/72 inch
		assertTrue(facts.contains("864.567 x 595.276 pts"), facts);
		for (String box : List.of("MediaBox", "CropBox", "BleedBox", "TrimBox")) {
			assertTrue(facts.matches("(?s).*" + box + ":\\s+0.00\\s+0.00\\s+864.57\\s+595.28\\n.*"), box + " in " + facts);
		}
		assertEquals(new Bounds(10, 10, 110, 60), inked(picture(pdf), 0.11));
	}

	/** The middle of the outermost lines, in mm to a tenth. */
	private static Bounds inked(BufferedImage image, double halfWidth) {
		Bounds inked = Bounds.EMPTY;
		for (int y = 0; y < image.getHeight(); y++) {
			for (int x = 0; x < image.getWidth(); x++) {
				if ((image.getRGB(x, y) & 0xff) < 0x90) {
					inked = inked.with(new Bounds(x, y, x + 1, y + 1));
				}
			}
		}
		Bounds middle = new Bounds(inked.minX() / PIXELS_PER_MM, inked.minY() / PIXELS_PER_MM, inked.maxX() / PIXELS_PER_MM,
				inked.maxY() / PIXELS_PER_MM).grown(-halfWidth);
		return new Bounds(tenths(middle.minX()), tenths(middle.minY()), tenths(middle.maxX()), tenths(middle.maxY()));
	}

	private static double tenths(double mm) {
		return Math.round(mm * 10) / 10.0;
	}

	@Test
	void drawingIsTheTrimInsideItsMargin() throws Exception {
		byte[] pdf = PdfExporterTest.written(SampleJobs.outline("M-20 -10H80V40H-20Z", OperationKind.CUT),
				Map.of("margin", "12.7mm"));
		String facts = facts(pdf);
		// 100 x 50 mm and half an inch all round
		assertTrue(facts.contains("355.465 x 213.732 pts"), facts);
		assertTrue(facts.matches("(?s).*TrimBox:\\s+36.00\\s+36.00\\s+319.46\\s+177.73\\n.*"), facts);
		assertTrue(facts.matches("(?s).*PDF version:\\s+1.7\\n.*"), facts);
		assertFalse(facts.contains("CreationDate"), facts);
	}

	@Test
	void renderedLinesAreAsLongAsTheContours() throws Exception {
		PreparedJob job = SampleJobs.prepared(new Composition("Ahoy", SampleJobs.face("Liberation Sans Bold"), 40,
				Alignment.LEFT, OptionalDouble.empty(), List.of(), OperationKind.CUT).toJob());
		BufferedImage image = picture(PdfExporterTest.written(Handoff.of(job), Map.of("line-width", "0.4mm")), "-gray");
		double darkest = 255;
		double sum = 0;
		for (int y = 0; y < image.getHeight(); y++) {
			for (int x = 0; x < image.getWidth(); x++) {
				int grey = image.getRaster().getSample(x, y, 0);
				darkest = Math.min(darkest, grey);
				sum += 255 - grey;
			}
		}
		double inked = sum / (255 - darkest) / (PIXELS_PER_MM * PIXELS_PER_MM);
		double expected = 0.4 * job.elements().flatMap(element -> element.region().contours().stream())
				.mapToDouble(Contour::length).sum();
		assertEquals(1, inked / expected, 0.02, "of " + expected + " mm²; corners are a little more");
	}

	@Test
	void rollThatIsLongerThanReadersAllowHasLargerUnits() throws Exception {
		Qpdf pdf = read(PdfExporterTest.written(SampleJobs.outline("M0 0H12000V600H0Z", OperationKind.CUT),
				Map.of("margin", "0mm", "line-width", "0.3mm")));
		assertEquals(3, pdf.page("/UserUnit").getAsInt());
		List<Double> box = Qpdf.numbers(pdf.page("/MediaBox"));
		assertTrue(box.get(2) <= 14_400);
		assertEquals(12_000, box.get(2) * 3 * 25.4 / 72, 0.001);
		Painted path = Painted.of(pdf.content()).get(0);
		assertEquals(12_000 * 600.0, Math.abs(path.area()) * 9 * MM2_PER_UNIT2, 20);
		assertEquals(0.3, path.width() * 3 * 25.4 / 72, 1e-4);
	}

	private static BufferedImage sample(int type) {
		BufferedImage image = new BufferedImage(40, 20, type);
		Graphics2D graphics = image.createGraphics();
		graphics.setColor(new Color(200, 30, 20));
		graphics.fillRect(0, 0, 20, 10);
		graphics.setColor(new Color(20, 30, 200, type == BufferedImage.TYPE_INT_ARGB ? 128 : 255));
		graphics.fillRect(20, 10, 20, 10);
		graphics.dispose();
		return image;
	}

	private static byte[] encoded(String format, int type) throws Exception {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		assertTrue(ImageIO.write(sample(type), format, out));
		return out.toByteArray();
	}

	private static Job pictures(byte[] image, int copies) {
		Job job = Jobs.create("job", "Ferry banner");
		Layer layer = Jobs.addLayer(job, "Print");
		for (int i = 0; i < copies; i++) {
			Picture picture = Jobs.addPicture(layer, ImageBytes.of(image), null, 40, 20);
			picture.setTransform(Matrix.translation(0, 30.0 * i));
		}
		Jobs.addOperation(Jobs.addOutline(layer, "M-2 -2H42V22H-2Z"), OperationKind.CUT);
		return job;
	}

	@Test
	void photographStaysAsItIsAndCopiesShareIt() throws Exception {
		byte[] jpeg = encoded("jpeg", BufferedImage.TYPE_INT_RGB);
		Qpdf pdf = read(PdfExporterTest.written(pictures(jpeg, 3), Map.of()));
		var images = pdf.page("/Resources", "/XObject").getAsJsonObject();
		assertEquals(1, images.size());
		var image = pdf.page("/Resources", "/XObject", images.keySet().iterator().next());
		assertEquals("/DCTDecode", pdf.below(image, "/Filter").getAsString());
		assertArrayEquals(jpeg, pdf.data(image));
		List<Painted> drawn = Painted.of(pdf.content()).stream().filter(each -> each.operator().equals("Do")).toList();
		assertEquals(3, drawn.size());
		for (Painted each : drawn) {
			var group = pdf.page("/Resources", "/Properties", each.groups().get(0)).getAsJsonObject();
			assertEquals(Step.of(OperationKind.PRINT).name(), Qpdf.name(group), "no picture among lines for a machine");
		}
	}

	@Test
	void pixelsOfAPngAreKeptWithWhatShowsThroughThem() throws Exception {
		byte[] png = encoded("png", BufferedImage.TYPE_INT_ARGB);
		byte[] pdf = PdfExporterTest.written(pictures(png, 1), Map.of());
		Qpdf.output("pdfimages", "-png", file(pdf).toString(), folder.resolve("image").toString());
		BufferedImage colours = ImageIO.read(folder.resolve("image-000.png").toFile());
		BufferedImage mask = ImageIO.read(folder.resolve("image-001.png").toFile());
		BufferedImage source = sample(BufferedImage.TYPE_INT_ARGB);
		for (int y = 0; y < source.getHeight(); y++) {
			for (int x = 0; x < source.getWidth(); x++) {
				int alpha = source.getRGB(x, y) >>> 24;
				assertEquals(alpha, mask.getRaster().getSample(x, y, 0));
				if (alpha > 0) {
					assertEquals(source.getRGB(x, y) & 0xffffff, colours.getRGB(x, y) & 0xffffff);
				}
			}
		}
	}

	@Test
	void picturesLieWhereTheyAreAndAreUpright() throws Exception {
		// 40 x 20 mm, 2 mm inside the cut, which is 5 mm inside the page
		BufferedImage image = picture(PdfExporterTest.written(pictures(encoded("png", BufferedImage.TYPE_INT_ARGB), 1), Map.of()));
		assertColour(new Color(200, 30, 20), image, 7 + 1, 7 + 1);
		assertColour(new Color(200, 30, 20), image, 7 + 19, 7 + 9);
		assertColour(Color.WHITE, image, 7 + 21, 7 + 9);
		// half of it over white
		assertColour(new Color(137, 142, 227), image, 7 + 39, 7 + 19);
	}

	private static void assertColour(Color expected, BufferedImage image, double x, double y) {
		Color at = new Color(image.getRGB((int) (x * PIXELS_PER_MM), (int) (y * PIXELS_PER_MM)));
		assertTrue(Math.abs(expected.getRed() - at.getRed()) < 4 && Math.abs(expected.getGreen() - at.getGreen()) < 4
				&& Math.abs(expected.getBlue() - at.getBlue()) < 4, at + " at " + x + ", " + y);
	}

	@Test
	void otherKindsOfPicturesAreTakenToo() throws Exception {
		for (String format : List.of("gif", "bmp")) {
			Qpdf pdf = read(PdfExporterTest.written(pictures(encoded(format, BufferedImage.TYPE_INT_RGB), 1), Map.of()));
			assertNotNull(pdf.page("/Resources", "/XObject"), format);
		}
	}

	@Test
	void pictureThatBreaksOffIsShownAsFarAsItGoes() throws Exception {
		BufferedImage noise = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
		Random random = new Random(7);
		for (int i = 0; i < 40_000; i++) {
			noise.setRGB(i % 200, i / 200, random.nextInt(0x1000000));
		}
		ByteArrayOutputStream whole = new ByteArrayOutputStream();
		assertTrue(ImageIO.write(noise, "png", whole));
		byte[] half = Arrays.copyOf(whole.toByteArray(), whole.size() / 2);
		PreparedJob job = SampleJobs.prepared(pictures(half, 1));
		boolean shown = job.elements().anyMatch(element -> element.picture().isPresent());
		Qpdf pdf = read(PdfExporterTest.written(Handoff.of(job), Map.of()));
		assertEquals(shown, pdf.page("/Resources", "/XObject") != null);
	}

	@Test
	void labelIsTextThatNamesJobSheetSizeAndDueDate() throws Exception {
		Job job = SampleJobs.outline("M0 0H100V50H0Z", OperationKind.CUT);
		job.setNumber("2026-117");
		job.setDue(LocalDate.of(2026, 12, 4));
		Sheet sheet = Jobs.addSheet(job, null, 305, 210);
		Handoff handoff = Handoff.of(LaidSheets.of(job, Map.of(job.getId(), SampleJobs.prepared(job)), Tolerance.DEFAULT,
				Monitor.NONE).get(0), Workshop.plain(), RunChoices.plain());
		byte[] pdf = PdfExporterTest.written(handoff, Map.of("label", "with"));
		String text = new String(Qpdf.output("pdftotext", file(pdf).toString(), "-"), StandardCharsets.UTF_8).strip();
		assertEquals(Label.of(handoff), text);
		for (String part : List.of("2026-117", "A shape", "305 × 210 mm", "2026-12-04")) {
			assertTrue(text.contains(part), part + " in " + text);
		}
		sheet.setName("Offcut");
		assertTrue(Label.of(handoff).contains("Offcut"));
		read(pdf);
		assertEquals("", new String(Qpdf.output("pdftotext", file(PdfExporterTest.written(handoff, Map.of())).toString(), "-"),
				StandardCharsets.UTF_8).strip(), "off unless asked for");
	}
}
