package org.frisket.export.png;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;

import javax.imageio.ImageIO;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.testkit.ExporterContract;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PngExporterTest extends ExporterContract {

	@Override
	protected Exporter exporter() {
		return new PngExporter();
	}

	private BufferedImage image(Job job, Map<String, String> options) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter().export(Handoff.of(SampleJobs.prepared(job)), OptionValues.of(exporter().options(), options), Monitor.NONE, out);
		return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
	}

	@Test
	void sizeFollowsTheDrawingAndTheResolution() throws IOException {
		// 100 mm and two margins of 10 mm at 254 pixels to the inch, ten to the millimetre
		BufferedImage image = image(SampleJobs.outline("M0 0H100V50H0Z", OperationKind.CUT), Map.of("dpi", "254"));
		assertEquals(1200, image.getWidth());
		assertTrue(image.getHeight() >= 700, "drawing and margins, and the caption below");
	}

	@Test
	void partsHaveTheColourOfTheirLayerAndHolesShowThePaper() throws IOException {
		Job job = SampleJobs.outline("M0 0H100V50H0Z M40 20V30H60V20Z", OperationKind.CUT);
		BufferedImage image = image(job, Map.of("dpi", "254"));
		assertEquals(0x1d6f78, image.getRGB(200, 200) & 0xffffff);
		assertEquals(0xffffff, image.getRGB(600, 350) & 0xffffff);
		assertEquals(0xffffff, image.getRGB(20, 20) & 0xffffff);
	}

	@Test
	void picturesArePaintedWhereTheyLie() throws IOException {
		Job job = SampleJobs.outline("M0 0H100V50H0Z", OperationKind.CUT);
		BufferedImage pixels = new BufferedImage(2, 1, BufferedImage.TYPE_INT_RGB);
		pixels.setRGB(0, 0, 0xcc0000);
		pixels.setRGB(1, 0, 0x0000cc);
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		ImageIO.write(pixels, "png", file);
		Picture picture = Jobs.addPicture(job.getLayers().get(0), ImageBytes.of(file.toByteArray()), null, 40, 20);
		// a quarter turn: the first pixel above the second
		picture.setTransform(new Matrix(0, 1, -1, 0, 50, 5));
		BufferedImage image = image(job, Map.of("dpi", "254"));
		assertEquals(0xcc0000, image.getRGB(500, 200) & 0xffffff);
		assertEquals(0x0000cc, image.getRGB(500, 500) & 0xffffff);
		assertEquals(0x1d6f78, image.getRGB(700, 300) & 0xffffff);
	}

	@Test
	void penLinesAreDoubleAndLeaveTheInsideBlank() throws IOException {
		BufferedImage image = image(SampleJobs.outline("M0 0H100V50H0Z", OperationKind.DRAW), Map.of("dpi", "508"));
		assertEquals(0xffffff, image.getRGB(600, 600) & 0xffffff);
		int strokes = 0;
		boolean dark = false;
		for (int y = 150; y < 250; y++) {
			boolean now = (image.getRGB(600, y) >> 16 & 0xff) < 0xa0;
			strokes += now && !dark ? 1 : 0;
			dark = now;
		}
		assertEquals(2, strokes);
	}

	@Test
	void hiddenLayersAreNotPainted() throws IOException {
		Job job = SampleJobs.outline("M0 0H100V50H0Z", OperationKind.CUT);
		job.getLayers().get(0).setVisible(false);
		BufferedImage image = image(job, Map.of("dpi", "100"));
		assertTrue(image.getHeight() < 200);
	}

	@Test
	void tooManyPixelsAreRefusedWithAReason() {
		Job job = SampleJobs.outline("M0 0H9000V9000H0Z", OperationKind.CUT);
		IOException refusal = assertThrows(IOException.class, () -> image(job, Map.of("dpi", "1200")));
		assertTrue(refusal.getMessage().contains("fewer dpi"), refusal.getMessage());
		assertTrue(refusal.getMessage().contains("100 million"), refusal.getMessage());
	}

	/** 2^32 by 2^32 pixels and some: counted in 64 bits they would be few. */
	@ParameterizedTest
	@ValueSource(strings = { "9E7", "4E9", "1E12" })
	void absurdSizeIsRefusedBeforeAPictureIsMade(String size) {
		Job job = SampleJobs.outline("M0 0H" + size + "V" + size + "H0Z", OperationKind.CUT);
		IOException refusal = assertThrows(IOException.class, () -> image(job, Map.of("dpi", "1200")));
		assertTrue(refusal.getMessage().contains(" pixels are too many"), refusal.getMessage());
	}
}
