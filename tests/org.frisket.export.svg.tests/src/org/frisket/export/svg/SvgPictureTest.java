package org.frisket.export.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

import javax.imageio.ImageIO;

import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.testkit.RenderedArt;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A picture with an edge all the way to the file of a machine. */
class SvgPictureTest {

	private static final Pattern CUT = Pattern.compile("<path [^>]*data-operation=\"cut\"[^>]* d=\"([^\"]*)\"");
	/** The picture is 100 mm wide, and a pixel of it 0.25 mm. */
	private static final double PIXEL = 0.25;

	private final Job job = Jobs.create("HL-9", "Gift tags");
	private Picture picture;

	@BeforeEach
	void addDisc() {
		picture = Jobs.addPicture(Jobs.addLayer(job, "Tags"), RenderedArt.discOn(Color.WHITE), "image/png", 100, 75);
		Jobs.addOperation(picture, OperationKind.CUT);
	}

	private String svg() throws Exception {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		SvgExporter exporter = new SvgExporter();
		exporter.export(Handoff.of(SampleJobs.prepared(job)),
				OptionValues.of(exporter.options(), Map.of("margin", "0mm")), Monitor.NONE, out);
		return out.toString(StandardCharsets.UTF_8);
	}

	/** The page begins at the left and the top of the picture or its cut, whichever is farther out: here that of the cut. */
	@Test
	void cutLineIsTheContourOfTheDrawnDiscWithinThreeTenthsOfAPixel() throws Exception {
		ChangePicture.edged(List.of(picture), true).apply();
		String svg = svg();
		Matcher cut = CUT.matcher(svg);
		assertTrue(cut.find(), svg);
		List<Point> line = PathData.parse(cut.group(1)).contours().get(0).flattened(0.005);
		Point centre = new Point(RenderedArt.RADIUS * PIXEL, RenderedArt.RADIUS * PIXEL);
		double worst = line.stream().mapToDouble(point -> Math.abs(point.distance(centre) - RenderedArt.RADIUS * PIXEL)).max()
				.orElseThrow();
		assertTrue(worst <= 0.3 * PIXEL, worst / PIXEL + " pixels");
		assertFalse(cut.find(), "one line");
		assertEquals(1, svg.split("<image ", -1).length - 1);
	}

	@Test
	void imageIsWrittenOnlyWhereItIsPrinted() throws Exception {
		assertFalse(CUT.matcher(svg()).find(), "without an edge it is not cut");
		assertTrue(svg().contains("<image "));
		ChangePicture.edged(List.of(picture), true).apply();
		ChangeOperation.remove(List.of(picture), 0).apply();
		assertFalse(svg().contains("<image "));
		assertFalse(svg().contains("xlink"));
		assertTrue(CUT.matcher(svg()).find());
	}

	/** With an eXIf chunk (PNG, third edition, 11.3.3.4) that says: turn it a quarter clockwise (TIFF 6.0, orientation 6). */
	private static byte[] onItsSide(byte[] png) {
		byte[] chunk = ByteBuffer.allocate(4 + 26).put("eXIf".getBytes(StandardCharsets.US_ASCII))
				.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 1).putShort((short) 274)
				.putShort((short) 3).putInt(1).putShort((short) 6).putShort((short) 0).putInt(0).array();
		CRC32 sum = new CRC32();
		sum.update(chunk);
		return ByteBuffer.allocate(png.length + chunk.length + 8).put(png, 0, 33).putInt(chunk.length - 4).put(chunk)
				.putInt((int) sum.getValue()).put(png, 33, png.length - 33).array();
	}

	/** Readers of SVG do not agree on what to make of such a file. */
	@Test
	void onesThatLieOnTheirSideAreWrittenUpright() throws Exception {
		picture.setImage(ImageBytes.of(onItsSide(RenderedArt.disc().open().readAllBytes())));
		Matcher written = Pattern.compile("href=\"data:image/png;base64,([^\"]*)\"").matcher(svg());
		assertTrue(written.find());
		BufferedImage image = ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(written.group(1))));
		assertEquals(List.of(RenderedArt.HEIGHT, RenderedArt.WIDTH), List.of(image.getWidth(), image.getHeight()));
	}
}
