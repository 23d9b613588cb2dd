package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.prepare.pictures.UnreadablePictureException;
import org.junit.jupiter.api.Test;

/** Pictures of pixels in a job. */
class PictureTest {

	private final Job job = Jobs.create("HL-8", "Ferry banner");
	private final Layer layer = Jobs.addLayer(job, "Photo");
	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());

	private static byte[] file(String format, int width, int height) {
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
		for (int i = 0; i < width * height; i++) {
			image.setRGB(i % width, i / width, i * 0x9e3779b1);
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try {
			assertTrue(ImageIO.write(image, format, out));
		} catch (IOException e) {
			throw new AssertionError(e);
		}
		return out.toByteArray();
	}

	private Picture add(byte[] bytes) {
		return Jobs.addPicture(layer, ImageBytes.of(bytes), "image/png", 40, 20);
	}

	private PreparedJob prepare() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private PreparedElement prepared(Picture picture) {
		return prepare().element(picture.getId()).orElseThrow();
	}

	private List<String> findings() {
		return prepare().findings().stream().map(Finding::id).toList();
	}

	@Test
	void fillsItsRectangleWhereverItIsTaken() {
		Picture picture = add(file("png", 8, 4));
		picture.setTransform(new Matrix(0, 1, -1, 0, 50, 10));
		PreparedElement prepared = prepared(picture);
		Bounds bounds = prepared.bounds();
		assertEquals(new Bounds(30, 10, 50, 50), bounds);
		assertEquals(800, prepared.region().area(), 1e-9);
		assertEquals(new Point(30, 50), prepared.picture().orElseThrow().place().apply(new Point(1, 1)));
		assertTrue(prepared.has(OperationKind.PRINT));
		assertEquals(List.of(), findings());
	}

	@Test
	void matsFollowItEvenIfItCannotBeRead() {
		Picture picture = add("no picture".getBytes());
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 5, List.of(picture));
		assertEquals(new Bounds(-5, -5, 45, 25), prepare().element(mat.getId()).orElseThrow().bounds());
		PreparedElement prepared = prepared(picture);
		assertTrue(prepared.picture().isEmpty());
		assertTrue(prepared.region().isEmpty());
		assertEquals(new Bounds(0, 0, 40, 20), Placeholder.of(prepared).bounds());
		assertEquals(List.of(Placeholder.PICTURE_UNREADABLE), findings());
	}

	@Test
	void brokenFilesAreTold() {
		byte[] sound = file("png", 64, 64);
		add(Arrays.copyOf(sound, sound.length / 2));
		assertEquals(List.of(Placeholder.PICTURE_UNREADABLE), findings());
	}

	@Test
	void damagedFilesAreShownAndTold() {
		byte[] sound = file("jpeg", 64, 64);
		Picture picture = add(Arrays.copyOf(sound, sound.length * 3 / 4));
		assertEquals(List.of("picture-damaged"), findings());
		assertTrue(prepared(picture).picture().isPresent());
	}

	@Test
	void hugeOnesAreRefusedByTheirHead() {
		byte[] huge = file("png", 2, 2);
		// width and height in the IHDR chunk of PNG, section 11.2.2 of its specification
		ByteBuffer.wrap(huge).putInt(16, 20_000).putInt(20, 20_000);
		UnreadablePictureException refusal = assertThrows(UnreadablePictureException.class,
				() -> PictureFile.of(ImageBytes.of(huge)));
		assertTrue(refusal.getMessage().matches("(?s).*20.?000 × 20.?000.*100.*"), refusal.getMessage());
		add(huge);
		assertEquals(List.of(Placeholder.PICTURE_UNREADABLE), findings());
	}

	@Test
	void largeOnesAreDecodedNoLargerThanAsked() throws IOException {
		PictureFile file = PictureFile.of(ImageBytes.of(file("png", 300, 200)));
		assertEquals("image/png", file.mediaType());
		BufferedImage small = file.decode(100).image();
		assertEquals(100, small.getWidth());
		assertTrue(Math.abs(small.getHeight() - 66.7) < 1, "height " + small.getHeight());
		assertEquals(300, file.decode(1000).image().getWidth());
	}

	@Test
	void travelsInTheJobFile() throws IOException {
		byte[] bytes = file("gif", 5, 5);
		add(bytes).setName("Quay");
		Job read = JobFile.load(JobFile.toBytes(job), "ferry.frjob");
		Picture picture = (Picture) Jobs.elements(read).get(0);
		assertEquals(ImageBytes.of(bytes), picture.getImage());
		assertEquals(40, picture.getWidth());
		assertEquals("Quay", picture.getName());
		String broken = new String(JobFile.toBytes(job), java.nio.charset.StandardCharsets.UTF_8)
				.replaceFirst("image=\"[^\"]{4}", "image=\"§§§§");
		assertTrue(assertThrows(IOException.class, () -> JobFile
				.load(broken.getBytes(java.nio.charset.StandardCharsets.UTF_8), "ferry.frjob")).getMessage()
				.contains("ferry.frjob"));
	}
}
