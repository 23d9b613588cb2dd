package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.util.Matrix;
import org.frisket.export.pdf.PictureObjects;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.BleedKind;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedPicture;
import org.frisket.print.picture.PictureFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** SVG and pages of PDF in a print file, as poppler reads and paints them: they stay what they are. */
class VectorArtTest {

	private static final float UNIT = 72 / 25.4f;
	/** Of places and widths, in mm: each edge is told in steps of a quarter of a pixel of 0.05 mm. */
	private static final double NEAR = 0.0126;
	/** Of a colour, of 255, within a pixel beside the focus of a gradient. */
	private static final int STEEP = 32;

	@TempDir
	private Path folder;

	/** 60 by 30 mm: a dark box of 40 by 20 mm, 5 mm from the left and 4 mm from the top; the rest is bare. */
	private static String svg(String more) {
		return "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='30mm' viewBox='0 0 600 300'>" + more
				+ "<path d='M50 40H450V240H50Z'/></svg>";
	}

	/** The same as page 2 of 3, and a word below the box. */
	private static byte[] pdf(int turn) throws IOException {
		try (PDDocument document = new PDDocument()) {
			PDOptionalContentProperties layers = new PDOptionalContentProperties();
			PDOptionalContentGroup hidden = new PDOptionalContentGroup("Hidden");
			layers.addGroup(hidden);
			layers.setGroupEnabled(hidden, false);
			PDOptionalContentGroup shown = new PDOptionalContentGroup("Shown");
			layers.addGroup(shown);
			document.getDocumentCatalog().setOCProperties(layers);
			document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert('Lane')"));
			for (int i = 1; i <= 3; i++) {
				boolean along = turn % 180 == 0;
				PDPage page = new PDPage(new PDRectangle(11, -5, (along ? 60 : 30) * UNIT, (along ? 30 : 60) * UNIT));
				page.setRotation(turn);
				document.addPage(page);
				if (i != 2) {
					continue;
				}
				try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
					stream.transform(new Matrix(upright(turn, page.getMediaBox())));
					stream.beginMarkedContent(COSName.OC, hidden);
					stream.addRect(52 * UNIT, 0, 8 * UNIT, 30 * UNIT);
					stream.fill();
					stream.endMarkedContent();
					stream.beginMarkedContent(COSName.OC, shown);
					stream.addRect(5 * UNIT, 6 * UNIT, 40 * UNIT, 20 * UNIT);
					stream.fill();
					stream.endMarkedContent();
					stream.beginText();
					stream.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 8);
					stream.newLineAtOffset(6 * UNIT, 1 * UNIT);
					stream.showText("Harbour Lane");
					stream.endText();
				}
			}
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			document.save(out);
			return out.toByteArray();
		}
	}

	/** So that what is drawn lies as it is seen on a page that is turned clockwise. */
	private static AffineTransform upright(int turn, PDRectangle box) {
		float left = box.getLowerLeftX();
		float low = box.getLowerLeftY();
		float width = box.getWidth();
		float height = box.getHeight();
		return switch (turn) {
		case 90 -> new AffineTransform(0, 1, -1, 0, left + width, low);
		case 180 -> new AffineTransform(-1, 0, 0, -1, left + width, low + height);
		case 270 -> new AffineTransform(0, -1, 1, 0, left, low + height);
		default -> AffineTransform.getTranslateInstance(left, low);
		};
	}

	private static Region box(double left, double top, double right, double bottom) {
		return new Region(List.of(new Piece(Contour.polygon(List.of(new Point(left, top), new Point(left, bottom),
				new Point(right, bottom), new Point(right, top))), List.of())));
	}

	/** The art in its true size on the card of the sample, 10 mm from its left and top: at 70 and 60 mm of the sheet. */
	private static PrintedArt placed(byte[] file, int page) {
		return new PrintedArt(box(70, 60, 130, 90), box(70, 60, 130, 90), Optional.of(new PreparedPicture(ImageBytes.of(file),
				Transform.scaling(60, 30).then(Transform.translation(70, 60)))), page, false, false, List.of(), "#000000");
	}

	/** A sheet on which only this is printed. */
	private static byte[] printed(PrintedArt... art) throws IOException {
		PrintSheet bare = new SampleSheet().print(new PrintOptions(0, false, TurnEdge.SIDE, false, false, false, Optional.empty()));
		return SampleSheet.pdf(new PrintSheet(bare.faces(), bare.options(), List.of(art), List.of(), Optional.empty(), false,
				Optional.empty(), Optional.empty(), bare.trim(), bare.bleed(), List.of()));
	}

	private RasterPage page(byte[] pdf) throws Exception {
		return RasterPage.of(pdf, 1, new Bounds(45, 40, 155, 110), folder);
	}

	private void assertBoxInPlace(byte[] pdf) throws Exception {
		RasterPage page = page(pdf);
		assertEquals(40, page.inkAcross(50, 150, 75), NEAR);
		assertEquals(70 + 5 + 20, page.middleAcross(50, 150, 75), NEAR);
		assertEquals(20, page.inkDown(45, 85, 80), NEAR);
		assertEquals(0x000000, page.colour(75.1, 64.1));
		assertEquals(0xffffff, page.colour(74.9, 64.1));
		assertEquals(0xffffff, page.colour(75.1, 63.9));
	}

	private String said(byte[] pdf, String... command) throws Exception {
		Path file = Files.write(folder.resolve("print.pdf"), pdf);
		String[] whole = new String[command.length + 1];
		System.arraycopy(command, 0, whole, 0, command.length);
		whole[command.length] = file.toString();
		return RasterPage.output(whole);
	}

	@Test
	void svgStaysVectors() throws Exception {
		byte[] pdf = printed(placed(svg("").getBytes(StandardCharsets.UTF_8), 1));
		assertBoxInPlace(pdf);
		assertEquals(2, said(pdf, "pdfimages", "-list").lines().count(), "a head and no images");
		assertArrayEquals(pdf, printed(placed(svg("").getBytes(StandardCharsets.UTF_8), 1)));
	}

	@Test
	void gradientsTransparencyAndClippingStayVectors() throws Exception {
		String more = "<defs><linearGradient id='g'><stop offset='0' stop-color='red'/><stop offset='1' stop-color='blue'/>"
				+ "</linearGradient><clipPath id='c'><path d='M460 0H600V150H460Z'/></clipPath></defs>"
				+ "<g clip-path='url(#c)'><rect x='460' width='140' height='300' fill='url(#g)'/></g>"
				+ "<rect x='460' y='200' width='140' height='50' fill='#0000ff' opacity='0.5'/>";
		byte[] pdf = printed(placed(svg(more).getBytes(StandardCharsets.UTF_8), 1));
		assertBoxInPlace(pdf.clone());
		RasterPage page = page(pdf);
		assertEquals(0xff, page.colour(116.1, 70) >> 16, 4);
		assertEquals(0xff, page.colour(129.9, 70) & 0xff, 4);
		assertEquals(0xffffff, page.colour(120, 76));
		assertEquals(0x80, page.colour(120, 82) >> 16, 1);
		assertEquals(2, said(pdf, "pdfimages", "-list").lines().count(), "a head and no images");
	}

	/** Those that PDF has no words for, as they are drawn on the screen. */
	@ParameterizedTest
	@ValueSource(strings = { "<radialGradient id='g'>%s</radialGradient>",
			"<radialGradient id='g' fx='0.97' fy='0.9'>%s</radialGradient>",
			"<radialGradient id='g' gradientTransform='rotate(60 0.5 0.5)'>%s</radialGradient>",
			"<linearGradient id='g' x2='1' y2='1'>%s</linearGradient>",
			"<linearGradient id='g' gradientTransform='skewX(40)'>%s</linearGradient>" })
	void gradientsLookAsOnTheScreen(String gradient) throws Exception {
		byte[] art = svg("<defs>" + gradient.formatted("<stop offset='0' stop-color='red'/><stop offset='1' stop-color='blue'/>")
				+ "</defs><rect x='460' y='20' width='130' height='260' fill='url(#g)'/>").getBytes(StandardCharsets.UTF_8);
		RasterPage page = page(printed(placed(art, 1)));
		BufferedImage seen = PictureFile.of("art", art).image(60 * RasterPage.PER_MM, Monitor.NONE);
		for (double x = 46.5; x < 59; x++) {
			for (double y = 2.5; y < 28; y++) {
				int wanted = seen.getRGB((int) (x * RasterPage.PER_MM), (int) (y * RasterPage.PER_MM));
				int printed = page.colour(70 + x, 60 + y);
				assertEquals(wanted >> 16 & 0xff, printed >> 16, STEEP, "red at " + x + ", " + y);
				assertEquals(wanted & 0xff, printed & 0xff, STEEP, "blue at " + x + ", " + y);
			}
		}
	}

	/** Of 6 by 3 mm in its own size, printed ten times as large: the stripes of a pattern are as sharp as a printer can print them. */
	@Test
	void enlargedArtIsAsFineAsItsPrint() throws Exception {
		String more = "<defs><pattern id='p' width='40' height='40' patternUnits='userSpaceOnUse'><rect width='20' height='40' fill='red'/>"
				+ "</pattern></defs><rect x='480' width='120' height='300' fill='url(#p)'/>";
		String small = svg(more).replace("60mm", "6mm").replace("30mm", "3mm");
		RasterPage page = page(printed(placed(small.getBytes(StandardCharsets.UTF_8), 1)));
		for (int stripe = 0; stripe < 3; stripe++) {
			double left = 70 + 48 + 4 * stripe;
			assertEquals(0xff0000, page.colour(left + 0.15, 75));
			assertEquals(0xff0000, page.colour(left + 1.85, 75));
			assertEquals(0xffffff, page.colour(left + 2.15, 75));
			assertEquals(0xffffff, page.colour(left + 3.85, 75));
		}
	}

	/** A line of 1 mm across and of 0.25 mm down, by the transformation of its group. */
	@Test
	void linesAreStretchedWithTheirShape() throws Exception {
		byte[] pdf = printed(placed(svg("<g transform='scale(2 0.5)'><path d='M250 40H280V520H250Z' fill='none' stroke='#000' "
				+ "stroke-width='5'/></g>").getBytes(StandardCharsets.UTF_8), 1));
		RasterPage page = page(pdf);
		assertEquals(1, page.inkAcross(118, 122, 75), NEAR);
		assertEquals(0.25, page.inkDown(60, 64, 123), NEAR);
		assertEquals(2, said(pdf, "pdfimages", "-list").lines().count(), "a head and no images");
	}

	/** Blur cannot be a vector: a picture of it is in the form, and the box still is one. */
	@Test
	void onlyWhatNeedsPixelsBecomesThem() throws Exception {
		String blurred = "<defs><filter id='f'><feGaussianBlur stdDeviation='8'/></filter></defs>"
				+ "<rect x='500' y='50' width='60' height='60' fill='red' filter='url(#f)'/>";
		byte[] pdf = printed(placed(svg(blurred).getBytes(StandardCharsets.UTF_8), 1));
		assertBoxInPlace(pdf);
		int red = page(pdf).colour(123, 68);
		assertTrue(red >> 16 > 0xf0 && (red & 0xff) < 0x40, Integer.toHexString(red));
	}

	private static byte[] red(String definitions, String fill) {
		return svg("<defs>" + definitions + "</defs><rect x='500' width='100' height='100' " + fill + "/>")
				.getBytes(StandardCharsets.UTF_8);
	}

	private static final String STOPS = "<stop offset='0' stop-color='red'/><stop offset='1' stop-color='#00f'/>";

	/** PDF has no gradients that begin anew: they are written out. */
	@Test
	void repeatedGradientsStayVectors() throws Exception {
		byte[] art = red("<linearGradient id='g' x2='0.1' spreadMethod='repeat'>" + STOPS + "</linearGradient>", "fill='url(#g)'");
		byte[] pdf = printed(placed(art, 1));
		assertEquals(2, said(pdf, "pdfimages", "-list").lines().count(), "a head and no images");
		assertBoxInPlace(pdf);
		RasterPage page = page(pdf);
		for (int round = 0; round < 10; round++) {
			assertEquals(0.7 * 0xff, page.colour(120.3 + round, 65) >> 16, 0x0c, "the colours begin anew each mm");
			assertEquals(0.2 * 0xff, page.colour(120.8 + round, 65) >> 16, 0x0c);
		}
		byte[] back = printed(placed(red("<linearGradient id='g' x2='0.1' spreadMethod='reflect' gradientTransform='translate(0.05)'>"
				+ STOPS + "</linearGradient>", "fill='none' stroke='url(#g)' stroke-width='40'"), 1));
		assertEquals(2, said(back, "pdfimages", "-list").lines().count(), "a head and no images");
		// of the line, 4 mm wide, what is in the art; red at 0.5 mm, 2.5 mm, and so on
		assertEquals(0.7 * 0xff, page(back).colour(120.2, 61) >> 16, 0x0c);
		assertEquals(0.7 * 0xff, page(back).colour(122.2, 61) >> 16, 0x0c);
		assertEquals(0.7 * 0xff, page(back).colour(122.8, 61) >> 16, 0x0c, "and back");
	}

	/** Circles about a middle that is not that of the first one. */
	@Test
	void repeatedCirclesStayVectors() throws Exception {
		byte[] pdf = printed(placed(red("<radialGradient id='g' gradientUnits='userSpaceOnUse' cx='550' cy='50' r='10' fx='547' "
				+ "fy='50' spreadMethod='repeat'>" + STOPS + "</radialGradient>", "fill='url(#g)'"), 1));
		assertEquals(2, said(pdf, "pdfimages", "-list").lines().count(), "a head and no images");
		RasterPage page = page(pdf);
		// circle t: its middle 0.3 t to the right of the focus at 124.7, its radius t
		for (double t : new double[] { 0.3, 1.3, 2.3, 3.3 }) {
			assertEquals(0.7 * 0xff, page.colour(124.7 + 0.3 * t + t - 0.02, 65) >> 16, 0x10, "right at " + t);
			assertEquals(0.7 * 0xff, page.colour(124.7 + 0.3 * t - t + 0.02, 65) >> 16, 0x10, "left at " + t);
		}
	}

	/** Only what is seen through a mask, and what a pattern fills, is a picture, where it belongs; the box is none. */
	@Test
	void masksAndPatternsArePicturesOfTheirOwn() throws Exception {
		byte[] masked = red("<mask id='m' maskUnits='userSpaceOnUse' x='0' y='0' width='600' height='300'>"
				+ "<rect x='520' y='30' width='50' height='20' fill='#fff'/></mask>", "fill='red' mask='url(#m)'");
		byte[] pdf = printed(placed(masked, 1));
		assertBoxInPlace(pdf);
		RasterPage page = page(pdf);
		assertEquals(5, page.inkAcross(118, 131, 64), 0.06);
		assertEquals(2, page.inkDown(59, 72, 124), 0.06);
		assertEquals(122 + 2.5, page.middleAcross(118, 131, 64), 0.06);
		assertEquals(1, PictureObjects.shapesAsPixels(ImageBytes.of(masked), Monitor.NONE));
		byte[] hatched = red("<pattern id='p' width='20' height='20' patternUnits='userSpaceOnUse'>"
				+ "<rect width='10' height='20' fill='red'/></pattern>", "fill='url(#p)'");
		pdf = printed(placed(hatched, 1));
		assertBoxInPlace(pdf);
		page = page(pdf);
		// five stripes, each to half a pixel of 600 to the inch
		assertEquals(5, page.inkAcross(118, 131, 65), 5 * 0.5 * 25.4 / 600);
		assertEquals(0xff0000, page.colour(122.5, 65));
		assertEquals(0xffffff, page.colour(123.5, 65));
		assertEquals(1, PictureObjects.shapesAsPixels(ImageBytes.of(hatched), Monitor.NONE));
		assertEquals(0, PictureObjects.shapesAsPixels(ImageBytes.of(svg("").getBytes(StandardCharsets.UTF_8)), Monitor.NONE));
	}

	@Test
	void whatIsPrintedAsPixelsIsTold() throws Exception {
		String hatched = "<pattern id='p' width='20' height='20' patternUnits='userSpaceOnUse'>"
				+ "<rect width='10' height='20' fill='red'/></pattern>";
		List<Finding> findings = PixelArt.findings("sheet", List.of(placed(red(hatched, "fill='url(#p)'"), 1),
				placed(red(hatched, "fill='red'"), 1), placed(pdf(0), 2)), Monitor.NONE);
		assertEquals(List.of("art-as-pixels"), findings.stream().map(Finding::id).toList());
		assertEquals(new Point(100, 75), findings.get(0).place());
		assertTrue(findings.get(0).message().contains("600"), findings.get(0).message());
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, 90, 180, 270 })
	void pagesOfPdfStayWhatTheyAre(int turn) throws Exception {
		byte[] pdf = printed(placed(pdf(turn), 2));
		assertBoxInPlace(pdf);
		assertEquals(0xffffff, page(pdf).colour(125, 75), "a hidden layer stays hidden");
		assertTrue(said(pdf, "pdffonts").contains("Helvetica"));
		Path text = folder.resolve("print.txt");
		RasterPage.output("pdftotext", folder.resolve("print.pdf").toString(), text.toString());
		assertTrue(Files.readString(text).contains("Harbour Lane"));
		String plain = new String(pdf, StandardCharsets.ISO_8859_1);
		assertFalse(plain.contains("JavaScript") || plain.contains("/Hidden") || plain.contains("(Hidden)"), "nothing else comes along");
		assertArrayEquals(pdf, printed(placed(pdf(turn), 2)));
	}

	/** As cwebp wrote it of a drawing of ours: 64 by 48 pixels, red in the middle from 16, 12 to 48, 36. */
	@Test
	void webpIsPrinted() throws Exception {
		RasterPage page = page(printed(placed(Base64.getDecoder().decode("UklGRkgAAABXRUJQVlA4TDsAAAAvP8ALEBcgEEhxEEMsEEgCHHwsgUASydb7"
				+ "CgiKrlsu4LsOito2Yo7kkSzP2/MZ0f8JAMg4T48s/t3uAQA="), 1)));
		assertEquals(0xc8281e, page.colour(86, 69));
		assertEquals(0xc8281e, page.colour(114, 81));
		assertEquals(0xffffff, page.colour(84, 69));
		assertEquals(0xffffff, page.colour(116, 81));
	}

	/** Its EXIF part says that the first row is seen at the right (TIFF 6.0, orientation 6). */
	@Test
	void turnedPicturesArePrintedAsTheyAreSeen() throws Exception {
		BufferedImage image = new BufferedImage(30, 60, BufferedImage.TYPE_INT_RGB);
		for (int i = 0; i < 30 * 60; i++) {
			image.setRGB(i % 30, i / 30, i / 30 < 30 ? 0xff0000 : 0x0000ff);
		}
		ByteArrayOutputStream plain = new ByteArrayOutputStream();
		ImageIO.write(image, "jpeg", plain);
		ByteArrayOutputStream turned = new ByteArrayOutputStream();
		turned.write(plain.toByteArray(), 0, 2);
		turned.write(new byte[] { (byte) 0xff, (byte) 0xe1, 0, 34 });
		turned.write("Exif\0\0MM\0*\0\0\0\u0008\0\u0001\u0001\u0012\0\u0003\0\0\0\u0001\0\u0006\0\0\0\0\0\0"
				.getBytes(StandardCharsets.ISO_8859_1));
		turned.write(plain.toByteArray(), 2, plain.size() - 2);
		RasterPage page = page(printed(placed(turned.toByteArray(), 1)));
		assertTrue((page.colour(120, 75) >> 16) > 0xe0, "red at the right");
		assertTrue((page.colour(80, 75) & 0xff) > 0xe0, "blue at the left");
	}

	/** A frame of 30 by 30 pixels at the right of a canvas of 60 by 30; the rest of that is bare. */
	@Test
	void framesThatDoNotFillTheirPictureStayInPlace() throws Exception {
		BufferedImage frame = new BufferedImage(30, 30, BufferedImage.TYPE_BYTE_BINARY);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.write(frame, "gif", out);
		byte[] gif = out.toByteArray();
		int at = 13 + (gif[10] < 0 ? 3 << (gif[10] & 7) + 1 : 0);
		while (gif[at] == 0x21) {
			for (at += 2; gif[at] != 0; at += 1 + (gif[at] & 0xff)) {
				// blocks of what comes before the frame
			}
			at++;
		}
		assertEquals(0x2c, gif[at]);
		gif[6] = 60;
		gif[at + 1] = 30;
		RasterPage page = page(printed(placed(gif, 1)));
		assertEquals(0xffffff, page.colour(98, 75), "the canvas at the left");
		assertEquals(0x000000, page.colour(102, 75), "the frame at the right");
	}

	@Test
	void artIsThereOnceHoweverOftenItIsPrinted() throws Exception {
		byte[] file = pdf(0);
		int one = printed(placed(file, 2)).length;
		assertTrue(printed(placed(file, 2), placed(file, 2), placed(file, 2)).length < one + 600);
	}

	@Test
	void enlargedVectorsStayVectorsAndExtendedOnesLieOnPixels() throws Exception {
		String full = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='50mm' viewBox='0 0 80 50'>"
				+ "<rect width='80' height='50' fill='#ffffff'/><path fill='#ff0000' d='M0 0H40V50H0Z'/><path fill='#0000ff' d='M40 0H80V50H40Z'/></svg>";
		for (BleedKind kind : BleedKind.values()) {
			Region own = box(60, 50, 140, 100);
			Region area = box(57, 47, 143, 103);
			boolean larger = kind == BleedKind.ENLARGE;
			Transform place = larger ? Transform.scaling(86, 56).then(Transform.translation(57, 47))
					: Transform.scaling(80, 50).then(Transform.translation(60, 50));
			PrintedArt art = new PrintedArt(area, own, Optional.of(new PreparedPicture(
					ImageBytes.of(full.getBytes(StandardCharsets.UTF_8)), place)), 1, true, !larger, List.of(), "#000000");
			byte[] pdf = printed(art);
			assertEquals(larger ? 2 : 3, said(pdf, "pdfimages", "-list").lines().count(), kind.getLiteral());
			RasterPage page = page(pdf);
			assertEquals(0xff0000, page.colour(57.2, 75), kind.getLiteral());
			assertEquals(0x0000ff, page.colour(142.8, 102.8), kind.getLiteral());
			assertEquals(0xffffff, page.colour(56.8, 75), kind.getLiteral());
			for (double x = 59.5; !larger && x < 60.5; x += 0.05) {
				assertEquals(0xff0000, page.colour(x, 75), "no white shines through at " + x);
			}
			assertEquals(0xff0000, page.colour(99.97, 75), kind.getLiteral());
			assertEquals(0x0000ff, page.colour(100.03, 75), kind.getLiteral());
		}
	}
}
