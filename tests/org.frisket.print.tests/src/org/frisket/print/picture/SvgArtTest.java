package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** SVG as art: its size, what is drawn of it, and what becomes of files that ask for what they must not have. */
class SvgArtTest {

	private static final String RED_HALF = "<path fill='#c8281e' d='M0 0H20V20H0Z'/>";

	private static String svg(String attributes, String content) {
		return "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' " + attributes + ">" + content
				+ "</svg>";
	}

	/** 40 by 20 mm. */
	private static String tag(String content) {
		return svg("width='40mm' height='20mm' viewBox='0 0 40 20'", content);
	}

	private static PictureFile read(String svg) throws UnreadablePictureException {
		return PictureFile.of("tag.svg", svg.getBytes(StandardCharsets.UTF_8));
	}

	private static String refusal(String svg) {
		String message = assertThrows(UnreadablePictureException.class, () -> read(svg).image(40, Monitor.NONE)).getMessage();
		assertTrue(message.startsWith("“tag.svg”: "), message);
		return message;
	}

	private static List<String> remarks(String svg) throws UnreadablePictureException {
		PictureFile file = read(svg);
		return file.remarks(file.resolution()).stream().map(PictureRemark::id).toList();
	}

	/** Sizes worked out by hand: a pixel of CSS is 25.4 / 96 mm, a point 25.4 / 72 mm, a pica 12 points. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "width='40mm' height='2cm'|40|20", "width='2in' height='1.5in' viewBox='0 0 9 9'|50.8|38.1",
			"width='96' height='48px'|25.4|12.7", "width='72pt' height='6pc'|25.4|25.4", "width='40mm' viewBox='0 0 80 40'|40|20",
			"height='20mm' viewBox='0,0,80,40'|40|20", "width='1e1mm' height='.5cm'|10|5" })
	void sizeIsWhatTheFileSays(String attributes, double width, double height) throws Exception {
		PictureFile file = read(svg(attributes, ""));
		assertEquals(PictureFormat.SVG, file.format());
		assertEquals(width, file.trueWidth(), 1e-9);
		assertEquals(height, file.trueHeight(), 1e-9);
		assertEquals(width, file.width() * file.resolution().pixelWidth(), 1e-9);
		assertEquals(height, file.height() * file.resolution().pixelHeight(), 1e-9);
		assertEquals(Resolution.Source.DRAWN, file.resolution().source());
		assertEquals(List.of(), file.remarks(file.resolution()));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "viewBox='0 0 96 48'|25.4|12.7", "width='100%' height='100%' viewBox='0 0 96 48'|25.4|12.7",
			"x=''|79.375|39.6875", "viewBox='0 0 0 5'|79.375|39.6875", "width='-5mm' height='4mm'|79.375|4" })
	void sizeThatIsNotToldIsAssumedAndTold(String attributes, double width, double height) throws Exception {
		PictureFile file = read(svg(attributes, ""));
		assertEquals(width, file.trueWidth(), 1e-9);
		assertEquals(height, file.trueHeight(), 1e-9);
		assertEquals(List.of("size-assumed"), remarks(svg(attributes, "")));
	}

	@Test
	void itIsDrawnAtAnySizeAndTransparentWhereNothingIs() throws Exception {
		PictureFile file = read(tag(RED_HALF));
		for (int width : new int[] { 1, 7, 40, 400, 3000 }) {
			BufferedImage image = file.image(width, Monitor.NONE);
			assertEquals(width, image.getWidth());
			assertEquals(Math.max(1, Math.round(width / 2.0)), image.getHeight());
			if (width > 30) {
				assertEquals(0xffc8281e, image.getRGB(width / 4, width / 4));
				assertEquals(0, image.getRGB(3 * width / 4, width / 4));
			}
		}
		Pixels pixels = file.drawnAt(254).pixels(Monitor.NONE);
		assertEquals(400, pixels.width());
		assertEquals(200, pixels.height());
		assertEquals(254, file.drawnAt(254).resolution().x(), 1e-9);
		assertEquals(0xffc8281e, pixels.at(199, 199));
		assertEquals(0, pixels.at(200, 199));
	}

	/** Without a view box a user unit is a pixel of CSS. */
	@Test
	void whatHasNoViewBoxIsScaledAllTheSame() throws Exception {
		BufferedImage image = read(svg("width='96' height='48'", "<path d='M0 0H48V48H0Z'/>")).image(960, Monitor.NONE);
		assertEquals(0xff000000, image.getRGB(479, 470));
		assertEquals(0, image.getRGB(480, 470));
	}

	@Test
	void resolutionFollowsTheSize() throws Exception {
		assertEquals(1200, read(tag("")).resolution().x(), 1);
		PictureFile large = read(svg("width='2m' height='1m' viewBox='0 0 2 1'", ""));
		assertEquals(25.4 / 96 * 2, large.trueWidth(), 1e-9, "a metre is no unit of CSS");
		PictureFile banner = read(svg("width='200cm' height='100cm'", ""));
		assertEquals(24e6, (double) banner.width() * banner.height(), 24e3);
		assertEquals(1200, banner.drawnFor(40).resolution().x() * 2000 / 40, 1);
		assertThrows(UnreadablePictureException.class, () -> banner.drawnAt(1200));
	}

	@Test
	void onlyWhatIsInTheFileIsDrawn() throws Exception {
		assertEquals(List.of(), remarks(tag("<defs><path id='a' d='M0 0H9V9Z'/></defs><use xlink:href='#a'/><use href='#a'/>"
				+ "<a href='https://harbour-lane.example/'>" + RED_HALF + "</a>")));
		for (String outside : new String[] { "<image href='https://harbour-lane.example/a.png' width='9' height='9'/>",
				"<image xlink:href='file:///etc/hostname' width='9' height='9'/>", "<image href='a.png' width='9' height='9'/>",
				"<use href='other.svg#a'/>", "<style>@import 'a.css'; path { fill: red }</style>",
				"<style>@font-face { font-family: a; src: url(https://harbour-lane.example/a.woff) }</style>",
				"<path style='fill:url(other.svg#a)' d='M0 0H9V9Z'/>", "<path fill='url(\"a.svg#b\")' d='M0 0H9V9Z'/>" }) {
			assertEquals(List.of("outside-left-out"), remarks(tag(outside + RED_HALF)), outside);
			assertEquals(0xffc8281e, read(tag(outside + RED_HALF)).image(40, Monitor.NONE).getRGB(15, 15), outside);
		}
		String style = "<?xml-stylesheet href='a.css'?>" + tag(RED_HALF);
		assertEquals(List.of("outside-left-out"), remarks(style));
	}

	@Test
	void scriptsAreNotRunAndOtherLanguagesLeftOut() throws Exception {
		String script = "<script>throw 1</script><script href='a.js'/>";
		assertEquals(0xffc8281e, read(tag(script.substring(0, 24) + RED_HALF)).image(40, Monitor.NONE).getRGB(5, 5));
		assertEquals(List.of("outside-left-out"), remarks(tag(script)));
		assertEquals(List.of("foreign-left-out", "text-not-outlined", "first-only"), remarks(tag(
				"<foreignObject><p xmlns='http://www.w3.org/1999/xhtml'>Lane</p></foreignObject><text>Lane</text>"
						+ "<path d='M0 0'><animate attributeName='x' from='0' to='9' dur='1s'/></path>")));
	}

	@Test
	void picturesInItAreSeen() throws Exception {
		BufferedImage blue = new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB);
		for (int i = 0; i < 16; i++) {
			blue.setRGB(i % 4, i / 4, 0x143cb4);
		}
		String data = Base64.getMimeEncoder(20, new byte[] { '\n' }).encodeToString(MadePictures.written(blue, "png"));
		String image = "<image width='20' height='20' href='data:image/png;base64," + data + "'/>";
		assertEquals(0xff143cb4, read(tag(image)).image(40, Monitor.NONE).getRGB(10, 10));
		assertEquals(List.of(), remarks(tag(image)));
		String nested = Base64.getEncoder().encodeToString(tag(RED_HALF).getBytes(StandardCharsets.UTF_8));
		assertEquals(List.of("pictures-left-out"),
				remarks(tag("<image width='9' height='9' href='data:image/svg+xml;base64," + nested + "'/>")));
		assertEquals(List.of("pictures-left-out"), remarks(tag("<image width='9' height='9' href='data:image/png;base64,AAAA'/>")));
		byte[] bomb = MadePictures.written(blue, "png");
		ByteBuffer.wrap(bomb).putInt(16, 20_000).putInt(20, 20_000);
		assertEquals(List.of("pictures-left-out"), remarks(tag("<image width='9' height='9' href='data:image/png;base64,"
				+ Base64.getEncoder().encodeToString(bomb) + "'/>")));
	}

	@Test
	void entitiesAreRefusedAndDocumentTypesPassedOver() throws Exception {
		String type = "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>";
		assertEquals(0xffc8281e, read("<?xml version='1.0'?>" + type + tag(RED_HALF)).image(40, Monitor.NONE).getRGB(5, 5));
		StringBuilder bomb = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'Lane'>");
		for (int i = 1; i < 20; i++) {
			bomb.append("<!ENTITY a" + i + " '" + ("&a" + (i - 1) + ";").repeat(10) + "'>");
		}
		assertTrue(refusal(bomb + "]>" + tag("<text>&a19;</text>")).contains("line 1"));
		assertTrue(refusal("<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/hostname'>]>" + tag("<text>&a;</text>")).contains("line 1"));
	}

	@Test
	void copiesWithoutEndAreRefused() {
		assertTrue(refusal(tag("<g id='a'><use href='#a'/></g>")).contains("copies in it"));
		assertTrue(refusal(tag("<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>")).contains("copies in it"));
		StringBuilder doubling = new StringBuilder("<g id='a0'><path d='M0 0H9V9Z'/></g>");
		for (int i = 1; i < 40; i++) {
			doubling.append("<g id='a" + i + "'>" + ("<use href='#a" + (i - 1) + "'/>").repeat(2) + "</g>");
		}
		assertTrue(refusal(tag("<defs>" + doubling + "</defs><use href='#a39'/>")).contains("copies in it"));
		StringBuilder wide = new StringBuilder("<g id='a0'><path d='M0 0H9V9Z'/></g>");
		for (int i = 1; i < 10; i++) {
			wide.append("<g id='a" + i + "'>" + ("<use href='#a" + (i - 1) + "'/>").repeat(10) + "</g>");
		}
		assertTrue(refusal(tag("<defs>" + wide + "</defs><use href='#a9'/>")).contains("copies in it"));
	}

	@Test
	void boundsAreKept() {
		assertTrue(refusal(svg("width='1e9mm' height='4mm'", "")).contains("sides from 0.1 mm to 10000 mm"));
		assertTrue(refusal(svg("width='0.01mm' height='4mm'", "")).contains("sides from"));
		assertTrue(refusal(tag("<g>".repeat(200) + "</g>".repeat(200))).contains("100 deep"));
		assertTrue(refusal(tag("<g/>".repeat(100_001))).contains("more than 100000 elements"));
		assertTrue(refusal("<?xml version='1.0'?><html/>").contains("its first element is “html”"));
		assertTrue(refusal("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0").contains("line 1"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "UTF-8", "UTF-16", "UTF-16LE" })
	void everyEncodingOfXmlIsRead(String encoding) throws Exception {
		byte[] file = ("\ufeff<?xml version='1.0'?><!-- Harbour Lane -->" + tag(RED_HALF)).replaceFirst(
				encoding.equals("UTF-16") ? "^\ufeff" : "^$", "").getBytes(Charset.forName(encoding));
		assertEquals(0xffc8281e, PictureFile.of("tag.svg", file).image(40, Monitor.NONE).getRGB(5, 5));
	}

	@Test
	void drawingCanBeCalledOff() throws Exception {
		PictureFile file = read(tag("<path d='M0 0H9V9Z'/>".repeat(50)));
		int[] asked = new int[1];
		assertThrows(CancellationException.class, () -> file.image(40, () -> ++asked[0] > 10));
		assertTrue(asked[0] < 15, "called off in time");
	}

	@Test
	void damageAnywhereIsToldAndNothingElseHappens() {
		byte[] whole = tag("<defs><linearGradient id='g'><stop offset='0' stop-color='red'/></linearGradient><clipPath id='c'>"
				+ "<circle r='9'/></clipPath></defs><g clip-path='url(#c)' transform='rotate(7)'><path fill='url(#g)' d='M0 0C1 2 3 4 "
				+ "5 6Z'/><use href='#p' opacity='.5'/></g><rect id='p' width='3' height='4' rx='1'/>").getBytes(StandardCharsets.UTF_8);
		for (int seed = 0; seed < 300; seed++) {
			byte[] damaged = whole.clone();
			Random random = new Random(seed);
			for (int i = 0; i < 3; i++) {
				damaged[random.nextInt(damaged.length)] = (byte) (32 + random.nextInt(95));
			}
			try {
				PictureFile.of("tag.svg", damaged).image(40, Monitor.NONE);
			} catch (UnreadablePictureException e) {
				assertTrue(e.getMessage().startsWith("“tag.svg”: "), e.getMessage());
			}
		}
	}
}
