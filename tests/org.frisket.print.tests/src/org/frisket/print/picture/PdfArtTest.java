package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationSquare;
import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pages of PDF as art: their size, what is drawn of them, and what becomes of bad files. */
class PdfArtTest {

	private static final int RED = 0xffff0000;
	private static final int BLUE = 0xff0000ff;

	@TempDir
	private Path folder;

	/** 40 by 20 mm, red at the lower left and blue at the upper left, a quarter each; the right half is bare. */
	private static PDPage tag(MadePdf made, float x, float y) throws IOException {
		return made.page(x, y, 40, 20, stream -> {
			MadePdf.rectangle(stream, 1, 0, 0, x, y, 20, 10);
			MadePdf.rectangle(stream, 0, 0, 1, x, y + 10, 20, 10);
		});
	}

	private static byte[] tag() throws IOException {
		try (MadePdf made = new MadePdf()) {
			tag(made, 0, 0);
			return made.bytes();
		}
	}

	private static String refusal(byte[] file) {
		String message = assertThrows(UnreadablePictureException.class,
				() -> PictureFile.of("tag.pdf", file).image(40, Monitor.NONE)).getMessage();
		assertTrue(message.startsWith("“tag.pdf”: ") && message.contains(";"), message);
		return message;
	}

	@Test
	void aPageIsDrawnInItsSizeOnNothing() throws Exception {
		PictureFile file = PictureFile.of("tag.pdf", tag());
		assertEquals(PictureFormat.PDF, file.format());
		assertEquals("application/pdf", file.mediaType());
		assertEquals(40, file.trueWidth(), 1e-5);
		assertEquals(20, file.trueHeight(), 1e-5);
		assertEquals(1200, file.resolution().x(), 1);
		assertEquals(List.of(), file.remarks(file.resolution()));
		Pixels pixels = file.drawnAt(254).pixels(Monitor.NONE);
		assertEquals(400, pixels.width());
		assertEquals(BLUE, pixels.at(198, 1));
		assertEquals(RED, pixels.at(1, 198));
		assertEquals(0, pixels.at(202, 100));
		assertEquals(file.mediaType(), PictureFile.of(Files.write(folder.resolve("tag"), tag())).mediaType());
	}

	/** Where the blue corner of the page is seen when it is turned clockwise (ISO 32000-1, table 30). */
	@ParameterizedTest
	@CsvSource({ "0,40,20,0.1,0.1,0.1,0.9", "90,20,40,0.9,0.1,0.1,0.1", "180,40,20,0.9,0.9,0.9,0.1", "270,20,40,0.1,0.9,0.9,0.9" })
	void turnedPagesAreSeenAsTheyAreMeant(int turn, double width, double height, double blueX, double blueY, double redX,
			double redY) throws Exception {
		try (MadePdf made = new MadePdf()) {
			tag(made, 13, -7).setRotation(turn);
			PictureFile file = PictureFile.of("tag.pdf", made.bytes());
			assertEquals(width, file.trueWidth(), 1e-5);
			assertEquals(height, file.trueHeight(), 1e-5);
			BufferedImage image = file.image(200, Monitor.NONE);
			assertEquals(BLUE, image.getRGB((int) (blueX * image.getWidth()), (int) (blueY * image.getHeight())));
			assertEquals(RED, image.getRGB((int) (redX * image.getWidth()), (int) (redY * image.getHeight())));
		}
	}

	@Test
	void theCropBoxAndTheUnitCount() throws Exception {
		try (MadePdf made = new MadePdf()) {
			PDPage page = tag(made, 0, 0);
			page.setCropBox(new PDRectangle(10 * MadePdf.MM, 5 * MadePdf.MM, 20 * MadePdf.MM, 10 * MadePdf.MM));
			page.setUserUnit(2);
			PictureFile file = PictureFile.of("tag.pdf", made.bytes());
			assertEquals(40, file.trueWidth(), 1e-5);
			BufferedImage image = file.image(200, Monitor.NONE);
			assertEquals(BLUE, image.getRGB(98, 48));
			assertEquals(RED, image.getRGB(98, 52));
			assertEquals(0, image.getRGB(102, 50));
		}
	}

	@Test
	void thePageIsChosen() throws Exception {
		try (MadePdf made = new MadePdf()) {
			tag(made, 0, 0);
			made.page(0, 0, 10, 10, stream -> MadePdf.rectangle(stream, 0, 0, 1, 0, 0, 10, 10));
			PictureFile second = PictureFile.of("tag.pdf", made.bytes(), 2);
			assertEquals("application/pdf;page=2", second.mediaType());
			assertEquals(2, second.page());
			assertEquals(2, second.pages());
			assertEquals(10, second.trueWidth(), 1e-5);
			assertEquals(BLUE, second.image(10, Monitor.NONE).getRGB(5, 5));
			assertEquals("one-page", second.remarks(second.resolution()).get(0).id());
			assertTrue(assertThrows(UnreadablePictureException.class, () -> PictureFile.of("tag.pdf", made.bytes(), 3))
					.getMessage().contains("it has 2 pages, and no page 3"));
		}
		byte[] png = MadePictures.written(MadePictures.cornered(4, 4, BufferedImage.TYPE_INT_RGB), "png");
		assertTrue(assertThrows(UnreadablePictureException.class, () -> PictureFile.of("tag.png", png, 2)).getMessage()
				.contains("no page 2"));
	}

	@Test
	void encryptedFilesAreRefused() throws Exception {
		for (String user : new String[] { "", "lane" }) {
			try (MadePdf made = new MadePdf()) {
				tag(made, 0, 0);
				made.document.protect(new StandardProtectionPolicy("harbour", user, new AccessPermission()));
				assertTrue(refusal(made.bytes()).contains("it is encrypted"), user);
			}
		}
	}

	@Test
	void scriptsAndNotesStayBehind() throws Exception {
		try (MadePdf made = new MadePdf()) {
			PDPage page = tag(made, 0, 0);
			made.document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert('Lane')"));
			PDAnnotationSquare note = new PDAnnotationSquare();
			note.setRectangle(new PDRectangle(60, 0, 40, 40));
			note.constructAppearances();
			page.getAnnotations().add(note);
			page.setAnnotations(List.of(note));
			PictureFile file = PictureFile.of("tag.pdf", made.bytes());
			assertEquals(List.of("notes-left-out"), file.remarks(file.resolution()).stream().map(PictureRemark::id).toList());
			BufferedImage image = file.image(400, Monitor.NONE);
			for (int x = 202; x < 400; x++) {
				assertEquals(0, image.getRGB(x, 150), "bare at " + x);
			}
		}
	}

	/** Writers of text put one wherever an address stands. */
	@Test
	void whatIsNeverSeenOfAPageIsNotToldAsLeftOut() throws Exception {
		try (MadePdf made = new MadePdf()) {
			PDPage page = tag(made, 0, 0);
			PDAnnotationSquare hidden = new PDAnnotationSquare();
			hidden.setHidden(true);
			page.setAnnotations(List.of(new PDAnnotationLink(), hidden));
			PictureFile file = PictureFile.of("tag.pdf", made.bytes());
			assertEquals(List.of(), file.remarks(file.resolution()));
		}
	}

	@Test
	void fontsThatAreNotInItAreTold() throws Exception {
		try (MadePdf made = new MadePdf()) {
			made.page(0, 0, 40, 20, stream -> {
				stream.beginText();
				stream.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
				stream.showText("Harbour Lane");
				stream.endText();
			});
			PictureFile file = PictureFile.of("tag.pdf", made.bytes());
			PictureRemark remark = file.remarks(file.resolution()).get(0);
			assertEquals("font-not-embedded", remark.id());
			assertTrue(remark.text().contains("Helvetica"), remark.text());
		}
	}

	@Test
	void hugePicturesInItAreRefused() throws Exception {
		try (MadePdf made = new MadePdf()) {
			PDImageXObject image = LosslessFactory.createFromImage(made.document, new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB));
			image.getCOSObject().setInt(COSName.WIDTH, 60_000);
			image.getCOSObject().setInt(COSName.HEIGHT, 60_000);
			made.page(0, 0, 40, 20, stream -> stream.drawImage(image, 0, 0, 40, 40));
			assertTrue(refusal(made.bytes()).contains("60000 × 60000 pixels"));
		}
	}

	@Test
	void pagesOfNoSoundSizeAreRefused() throws Exception {
		try (MadePdf made = new MadePdf()) {
			made.page(0, 0, 20_000, 20, stream -> { });
			assertTrue(refusal(made.bytes()).contains("sides from"));
		}
		try (MadePdf made = new MadePdf()) {
			made.page(0, 0, 20, 0.01f, stream -> { });
			assertTrue(refusal(made.bytes()).contains("sides from"));
		}
	}

	@Test
	void formsWithoutEndAreRefused() throws Exception {
		StringBuilder file = new StringBuilder("%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
				+ "2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]"
				+ "/Resources<</XObject<</X 10 0 R>>>>/Contents 4 0 R>>endobj\n4 0 obj<</Length 4>>stream\n/X Do\nendstream endobj\n");
		for (int i = 10; i < 20; i++) {
			String content = "/X Do ".repeat(10);
			file.append(i + " 0 obj<</Type/XObject/Subtype/Form/BBox[0 0 99 99]/Resources<</XObject<</X " + (i + 1)
					+ " 0 R>>>>/Length " + content.length() + ">>stream\n" + content + "\nendstream endobj\n");
		}
		file.append("20 0 obj<</Type/XObject/Subtype/Form/BBox[0 0 99 99]/Length 13>>stream\n0 0 m 9 9 l S\n\nendstream endobj\n"
				+ "trailer<</Root 1 0 R>>\n%%EOF");
		PictureFile picture = PictureFile.of("tag.pdf", file.toString().getBytes(StandardCharsets.ISO_8859_1));
		int[] asked = new int[1];
		assertThrows(CancellationException.class, () -> picture.image(40, () -> ++asked[0] > 2000));
		assertTrue(asked[0] < 2010, "called off in time");
	}

	@Test
	void whatBreaksOffIsRefused() throws Exception {
		byte[] whole = tag();
		for (int length = 5; length < whole.length - 6; length += 23) {
			assertTrue(refusal(Arrays.copyOf(whole, length)).contains("breaks off at byte " + length));
		}
		assertTrue(refusal("%PDF-1.7\n%%EOF".getBytes(StandardCharsets.ISO_8859_1)).contains("PDF data are damaged"));
	}

	@Test
	void damageAnywhereIsToldAndNothingElseHappens() throws Exception {
		byte[] whole = tag();
		for (int seed = 0; seed < 150; seed++) {
			byte[] damaged = whole.clone();
			Random random = new Random(seed);
			for (int i = 0; i < 4; i++) {
				damaged[9 + random.nextInt(damaged.length - 9)] = (byte) random.nextInt(256);
			}
			try {
				PictureFile.of("tag.pdf", damaged).image(20, Monitor.NONE);
			} catch (UnreadablePictureException e) {
				assertTrue(e.getMessage().startsWith("“tag.pdf”: "), e.getMessage());
			}
		}
	}
}
