package org.frisket.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

import javax.imageio.ImageIO;

import org.frisket.cli.Frisket;
import org.frisket.geometry.Contour;
import org.frisket.geometry.PathData;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** From a picture to a file that can be cut, on the command line. */
class TraceVerbTest {

	/** In mm: 1000 pixels at 254 dots to the inch. */
	private static final double RADIUS = 40;

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	private static Answer frisket(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private Answer trace(Path picture, String out, String... more) {
		List<String> arguments = new ArrayList<>(
				List.of("trace", picture.toString(), "--out", folder.resolve(out).toString()));
		arguments.addAll(List.of(more));
		return frisket(arguments.toArray(String[]::new));
	}

	/** A disc with a hole, on cream. */
	private Path seal() throws IOException {
		BufferedImage image = new BufferedImage(1000, 1000, BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setColor(new Color(0xf4f0e6));
		graphics.fillRect(0, 0, 1000, 1000);
		graphics.setColor(new Color(0x1f5060));
		graphics.fill(new Ellipse2D.Double(100, 100, 800, 800));
		graphics.setColor(new Color(0xf4f0e6));
		graphics.fill(new Ellipse2D.Double(450, 450, 100, 100));
		graphics.dispose();
		Path file = folder.resolve("seal.png");
		ImageIO.write(image, "png", file.toFile());
		return file;
	}

	@Test
	void contourIsWrittenInMillimetres() throws Exception {
		Answer answer = trace(seal(), "seal.frjob", "--dpi", "254");
		assertEquals(0, answer.status(), answer.toString());
		assertTrue(answer.out().contains("picture 1000 × 1000 pixels, 254.0 dots to the inch (given), background #f4f0e6"),
				answer.out());
		assertTrue(answer.out().contains("1 pieces, 0 holes"), answer.out());
		Job job = JobFile.load(folder.resolve("seal.frjob"));
		Element element = Jobs.elements(job).get(0);
		assertEquals(OperationKind.CUT, element.getOperations().get(0).getKind());
		List<Contour> contours = PathData.parse(((Outline) element).getPathData()).contours();
		assertEquals(1, contours.size());
		assertTrue(contours.get(0).isClosed());
		assertEquals(Math.PI * RADIUS * RADIUS, -contours.get(0).signedArea(), 3);
		assertEquals(50, contours.get(0).bounds().centre().x(), 0.01);
	}

	@Test
	void optionsReachTheContourAndJsonTellsIt() throws Exception {
		Answer answer = trace(seal(), "seal.svg", "--width", "100mm", "--holes", "keep", "--offset", "2mm", "--json");
		assertEquals(0, answer.status(), answer.toString());
		JsonObject json = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals(1, json.get("pieces").getAsInt());
		assertEquals(1, json.get("holes").getAsInt());
		assertEquals(Math.PI * (42 * 42 - 3 * 3), json.get("area").getAsDouble(), 3);
		assertEquals(84, json.getAsJsonObject("box").get("width").getAsDouble(), 0.03);
		assertEquals(254, json.getAsJsonObject("dpi").get("x").getAsDouble(), 1e-9);
		assertEquals("given", json.getAsJsonObject("dpi").get("source").getAsString());
		assertTrue(json.get("nodes").getAsInt() <= 20, answer.out());
		assertEquals(0, json.getAsJsonArray("remarks").size());
		String svg = Files.readString(folder.resolve("seal.svg"));
		assertTrue(svg.contains("mm\""), svg);
		assertTrue(svg.contains("Z") || svg.contains("z"), svg);
	}

	@Test
	void picturesWithoutResolutionAreToldOf() throws Exception {
		Answer answer = trace(seal(), "seal.frjob", "--json");
		JsonObject json = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals("assumed", json.getAsJsonObject("dpi").get("source").getAsString());
		List<String> ids = new ArrayList<>();
		for (JsonElement remark : json.getAsJsonArray("remarks")) {
			ids.add(remark.getAsJsonObject().get("id").getAsString());
		}
		assertEquals(List.of("resolution-assumed", "resolution-low"), ids);
	}

	/** 60 by 40 mm, with a box of 40 by 20 mm on it. */
	private Path svg() throws IOException {
		return Files.writeString(folder.resolve("tag.svg"), "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='40mm'"
				+ " viewBox='0 0 60 40'><path d='M5 4H45V24H5Z'/></svg>");
	}

	/** A bare page, and one like {@link #svg()}. */
	private Path pdf() throws IOException {
		double mm = 72 / 25.4;
		String box = String.format(Locale.ROOT, "%.4f %.4f %.4f %.4f re f", 5 * mm, 16 * mm, 40 * mm, 20 * mm);
		return Files.writeString(folder.resolve("tag.pdf"), "%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
				+ "2 0 obj<</Type/Pages/Kids[3 0 R 4 0 R]/Count 2/MediaBox[0 0 " + String.format(Locale.ROOT, "%.4f %.4f", 60 * mm, 40 * mm)
				+ "]>>endobj\n3 0 obj<</Type/Page/Parent 2 0 R>>endobj\n4 0 obj<</Type/Page/Parent 2 0 R/Contents 5 0 R>>endobj\n"
				+ "5 0 obj<</Length " + box.length() + ">>stream\n" + box + "\nendstream endobj\ntrailer<</Root 1 0 R>>\n%%EOF");
	}

	private JsonObject traced(Path art, String... more) throws IOException {
		List<String> all = new ArrayList<>(List.of(more));
		all.add("--json");
		Answer answer = trace(art, "tag.frjob", all.toArray(String[]::new));
		assertEquals(0, answer.status(), answer.toString());
		return JsonParser.parseString(answer.out()).getAsJsonObject();
	}

	@Test
	void vectorsAreTracedInTheirTrueSize() throws Exception {
		for (Path art : List.of(svg(), pdf())) {
			boolean paged = art.toString().endsWith("pdf");
			JsonObject json = paged ? traced(art, "--page", "2") : traced(art);
			assertEquals("drawn", json.getAsJsonObject("dpi").get("source").getAsString());
			assertEquals(1200, json.getAsJsonObject("dpi").get("x").getAsDouble(), 1);
			assertEquals(paged ? 2 : 1, json.getAsJsonObject("picture").get("page").getAsInt());
			assertEquals(4, json.get("nodes").getAsInt());
			JsonObject box = json.getAsJsonObject("box");
			assertEquals(5, box.get("x").getAsDouble(), 0.01);
			assertEquals(4, box.get("y").getAsDouble(), 0.01);
			assertEquals(40, box.get("width").getAsDouble(), 0.01);
			assertEquals(20, box.get("height").getAsDouble(), 0.01);
		}
	}

	@Test
	void vectorsAreDrawnAsFineAndAsWideAsIsSaid() throws Exception {
		JsonObject coarse = traced(svg(), "--dpi", "254");
		assertEquals(600, coarse.getAsJsonObject("picture").get("width").getAsInt());
		assertEquals(40, coarse.getAsJsonObject("box").get("width").getAsDouble(), 0.03);
		JsonObject wide = traced(svg(), "--width", "12cm");
		assertEquals(80, wide.getAsJsonObject("box").get("width").getAsDouble(), 0.01);
		assertEquals(40, wide.getAsJsonObject("box").get("height").getAsDouble(), 0.01);
		assertEquals(1200, wide.getAsJsonObject("dpi").get("x").getAsDouble(), 1);
	}

	/** Twenty-five times as wide as it says: its own size would have more dots to the inch than any picture. */
	@Test
	void smallVectorsAreTracedAsWideAsIsSaid() throws Exception {
		Path icon = Files.writeString(folder.resolve("icon.svg"), "<svg xmlns='http://www.w3.org/2000/svg' width='2mm' height='1mm' "
				+ "viewBox='0 0 200 100'><path d='M50 25H150V75H50Z'/></svg>");
		JsonObject json = traced(icon, "--width", "50mm");
		assertEquals(25, json.getAsJsonObject("box").get("width").getAsDouble(), 0.01);
		assertEquals(12.5, json.getAsJsonObject("box").get("height").getAsDouble(), 0.01);
		assertEquals(1200, json.getAsJsonObject("dpi").get("x").getAsDouble(), 1);
	}

	/** As cwebp wrote it of a drawing of ours: 64 by 48 pixels, 32 by 24 of them red in the middle. */
	@Test
	void webpIsTraced() throws Exception {
		Path art = Files.write(folder.resolve("tag.webp"), Base64.getDecoder().decode("UklGRkgAAABXRUJQVlA4TDsAAAAvP8ALEBcgEEhxEEMsEEgCHHwsgUASydb7"
				+ "CgiKrlsu4LsOito2Yo7kkSzP2/MZ0f8JAMg4T48s/t3uAQA="));
		JsonObject json = traced(art, "--dpi", "25.4", "--specks", "10mm");
		assertEquals("WEBP", json.getAsJsonObject("picture").get("format").getAsString());
		assertEquals(32 * 24, json.get("area").getAsDouble(), 2);
		assertEquals(16, json.getAsJsonObject("box").get("x").getAsDouble(), 0.1);
	}

	@Test
	void pagesThatAreNotThereAreRefused() throws Exception {
		assertRefused("it has 2 pages, and no page 3", pdf(), "--page", "3");
		assertRefused("pages count from 1", pdf(), "--page", "0");
		assertRefused("no page 2", seal(), "--page", "2");
		assertRefused("million are read", svg(), "--dpi", "9000");
		assertRefused("the whole picture is transparent", pdf());
	}

	@Test
	void whatCannotBeTracedLeavesNoFile() throws Exception {
		assertRefused("is empty", Files.createFile(folder.resolve("empty.png")));
		assertRefused("there is no such file", folder.resolve("none.png"));
		assertRefused("damaged", broken());
		assertRefused("has the colour of its background, #f4f0e6", seal(), "--tolerance", "100");
		assertRefused("--tolerance: 101.0 is not between 0 and 100", seal(), "--tolerance", "101");
		assertRefused("out of range", seal(), "--specks=-1mm");
		assertRefused("not one of auto, keep, fill", seal(), "--holes", "some");
		assertRefused("is no background", seal(), "--background", "white");
		assertRefused("give one of them", seal(), "--dpi", "300", "--width", "10cm");
		assertRefused("dots to the inch", seal(), "--dpi", "-3");
		assertRefused("nothing is left", seal(), "--offset=-45mm", "--dpi", "254");
		Answer unknown = frisket("trace", seal().toString(), "--out", folder.resolve("out.tag").toString());
		assertEquals(2, unknown.status(), unknown.toString());
	}

	private void assertRefused(String reason, Path picture, String... more) {
		Answer answer = trace(picture, "out.svg", more);
		assertEquals(2, answer.status(), answer.toString());
		assertTrue(answer.err().contains(reason), answer.err());
		assertFalse(Files.exists(folder.resolve("out.svg")), reason);
	}

	private Path broken() throws IOException {
		byte[] whole = Files.readAllBytes(seal());
		whole[whole.length / 2] ^= 0x55;
		return Files.write(folder.resolve("broken.png"), whole);
	}
}
