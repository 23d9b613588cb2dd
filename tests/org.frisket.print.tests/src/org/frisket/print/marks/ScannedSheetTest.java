package org.frisket.print.marks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.MarkKind;
import org.frisket.print.measure.ScannedSheet;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.MadePictures;
import org.frisket.print.picture.Resolution;
import org.frisket.print.picture.UnreadablePictureException;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterFinding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scans of a simulated sheet, as files: what they say of their scale, and what the marks in them say. */
class ScannedSheetTest {

	private static final double DPI = 200;
	private static final double WIDTH = 72;
	private static final double HEIGHT = 50;
	private static final int PICTURE_WIDE = 640;
	private static final int PICTURE_HIGH = 470;

	@TempDir
	private Path folder;
	private MarkPlan plan;

	@BeforeEach
	void plan() throws Exception {
		plan = new MarkPlacement(new MarkDesign(MarkKind.DISC, 5, 1, 3), 4, 4).propose(WIDTH, HEIGHT, 4, List.of());
	}

	/** Turned by 2 degrees, its corner at (40, 20) pixels. */
	private static Projection map(boolean mirrored) {
		double scale = DPI / 25.4;
		Transform flip = mirrored ? new Transform(-1, 0, 0, 1, WIDTH, 0) : Transform.IDENTITY;
		return Projection.of(flip.then(Transform.scaling(scale, scale)).then(Transform.rotation(Math.toRadians(2)))
				.then(Transform.translation(40, 20)));
	}

	/** @param dpi that the file says; 0 for nothing */
	private Path file(Photograph photograph, double dpi) throws IOException {
		Grey grey = photograph.take(1);
		BufferedImage image = new BufferedImage(grey.width(), grey.height(), BufferedImage.TYPE_BYTE_GRAY);
		byte[] shades = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
		for (int i = 0; i < shades.length; i++) {
			shades[i] = (byte) grey.at(i % grey.width(), i / grey.width());
		}
		byte[] png = MadePictures.written(image, "png");
		if (dpi > 0) {
			int perMetre = (int) Math.round(dpi / 0.0254);
			png = MadePictures.withChunk(png, "pHYs",
					ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put((byte) 1).array());
		}
		return Files.write(folder.resolve("scan.png"), png);
	}

	private Photograph photograph(boolean mirrored) {
		return new Photograph(plan, map(mirrored), PICTURE_WIDE, PICTURE_HIGH).blur(0.7).noise(2);
	}

	private void assertPlaces(List<Optional<Point>> places, double perPixel) {
		for (int i = 0; i < places.size(); i++) {
			Point expected = map(false).apply(plan.marks().get(i).place()).times(perPixel);
			assertEquals(0, places.get(i).orElseThrow().distance(expected), 0.03, "mark " + (i + 1) + ", mm");
		}
	}

	@Test
	void aScannersFileIsTakenAtItsWord() throws Exception {
		ScannedSheet scan = ScannedSheet.read(file(photograph(false), DPI), plan, Monitor.NONE);
		Resolution resolution = scan.resolution().orElseThrow();
		assertEquals(DPI, resolution.x(), 0.01);
		assertEquals(DPI, scan.dpiOfMarks().orElseThrow(), 0.5);
		assertPlaces(scan.places(resolution), 25.4 / DPI);
	}

	/** Cameras write 72; a blade that believed it would cut nearly three times as large. */
	@Test
	void aCamerasFileIsNotBelieved() throws Exception {
		ScannedSheet scan = ScannedSheet.read(file(photograph(false), 72), plan, Monitor.NONE);
		assertEquals(4, scan.found().count(), "though the file misleads the search");
		assertTrue(scan.resolution().isEmpty());
		assertEquals(72, scan.said().orElseThrow().x(), 0.01);
		double seen = scan.dpiOfMarks().orElseThrow();
		assertEquals(DPI, seen, 0.5);
		assertPlaces(scan.places(Resolution.given(DPI)), 25.4 / DPI);
	}

	@Test
	void aFileThatSaysNothingIsAskedFor() throws Exception {
		ScannedSheet scan = ScannedSheet.read(file(photograph(false), 0), plan, Monitor.NONE);
		assertEquals(4, scan.found().count());
		assertTrue(scan.said().isEmpty());
		assertTrue(scan.resolution().isEmpty());
	}

	@Test
	void whatIsDoneIsNeverToldAsLess() throws Exception {
		List<Double> told = new ArrayList<>();
		ScannedSheet.read(file(photograph(false), 72), plan, new Monitor() {

			@Override
			public boolean isCancelled() {
				return false;
			}

			@Override
			public void worked(double fraction) {
				told.add(fraction);
			}
		});
		assertEquals(told.stream().sorted().toList(), told);
		assertEquals(1, told.get(told.size() - 1));
	}

	@Test
	void itIsLaidFlatUnderTheDesign() throws Exception {
		ScannedSheet scan = ScannedSheet.read(file(photograph(false), DPI), plan, Monitor.NONE);
		Grey flat = scan.flat(720, Monitor.NONE).orElseThrow();
		assertEquals(720, flat.width());
		assertEquals(500, flat.height());
		for (Mark mark : plan.marks().subList(1, 4)) {
			int x = (int) (mark.place().x() * 10);
			double beside = mark.place().y() + (mark.place().y() < HEIGHT / 2 ? 4 : -4);
			assertTrue(flat.at(x, (int) (mark.place().y() * 10)) < 60, "ink in the middle of a disc");
			assertTrue(flat.at(x, (int) (beside * 10)) > 190, "paper beside it");
		}
		assertTrue(flat.at(360, 250) > 190, "paper in the middle");
	}

	@Test
	void whatIsWrongIsSaidAsTheFinderSaysIt() throws Exception {
		ScannedSheet mirrored = ScannedSheet.read(file(photograph(true), DPI), plan, Monitor.NONE);
		assertTrue(mirrored.found().isBlocked());
		assertEquals("sheet-mirrored", mirrored.found().findings().get(0).id());
		ScannedSheet one = ScannedSheet.read(file(photograph(false).without(2), DPI), plan, Monitor.NONE);
		assertEquals(Optional.empty(), one.places(one.resolution().orElseThrow()).get(2));
		assertTrue(one.found().findings().stream().map(RegisterFinding::id).anyMatch("mark-missing"::equals));
		ScannedSheet none = ScannedSheet.read(
				file(photograph(false).without(0).without(1).without(2).without(3), DPI), plan, Monitor.NONE);
		assertEquals(List.of("marks-none"), none.found().findings().stream().map(RegisterFinding::id).toList());
		assertTrue(none.flat(100, Monitor.NONE).isEmpty());
		assertTrue(none.dpiOfMarks().isEmpty());
	}

	@Test
	void aFileThatIsNoPictureIsNamedAndACancelIsHeard() throws Exception {
		Path text = Files.writeString(folder.resolve("note.png"), "no picture");
		UnreadablePictureException e = assertThrows(UnreadablePictureException.class,
				() -> ScannedSheet.read(text, plan, Monitor.NONE));
		assertTrue(e.getMessage().contains("note.png"), e.getMessage());
		Path scan = file(photograph(false), DPI);
		assertThrows(CancellationException.class, () -> ScannedSheet.read(scan, plan, () -> true));
	}
}
