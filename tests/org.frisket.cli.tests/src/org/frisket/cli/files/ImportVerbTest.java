package org.frisket.cli.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

import javax.imageio.ImageIO;

import org.frisket.cli.Frisket;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Files of others become jobs on the command line. */
class ImportVerbTest {

	/** A tag with a star on it, a fold, and a stroke that comes in pieces. */
	private static final String TAG = """
			<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
				width="100mm" height="60mm" viewBox="0 0 100 60">
			<g id="Tag"><rect id="card" x="5" y="5" width="60" height="40"/>
			<path id="star" d="M20 10l4 8h-8z" fill="#b03a2e"/></g>
			<g id="Lines" fill="none" stroke="#000"><path id="fold" d="M75 5v30"/>
			<path id="stem" d="M80 5h10"/><path d="M90.01 5v10"/></g>
			%s
			</svg>
			""";

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

	private Path artwork(String name, String text) throws IOException {
		return Files.writeString(folder.resolve(name), text);
	}

	private Path job() {
		return folder.resolve("out.frjob");
	}

	private Answer take(Path file, String... more) {
		List<String> arguments = new ArrayList<>(List.of("import", file.toString(), "--out", job().toString()));
		arguments.addAll(List.of(more));
		return frisket(arguments.toArray(String[]::new));
	}

	private static String image(int width, int height) throws IOException {
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
		image.setRGB(0, 0, 0xff0000);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.write(image, "png", out);
		return Base64.getEncoder().encodeToString(out.toByteArray());
	}

	private static List<String> names(Layer layer) {
		return layer.getElements().stream().map(Element::getName).toList();
	}

	private static OperationKind kind(Job job, String name) {
		return Jobs.elements(job).stream().filter(element -> name.equals(element.getName())).findFirst().orElseThrow()
				.getOperations().get(0).getKind();
	}

	@Test
	void artIsPrintedAsItIsAndCutAlongItsEdge() throws Exception {
		Answer answer = take(artwork("tag.svg", TAG.formatted("")), "--set", "as=picture", "--set", "pictures=kiss-cut");
		assertEquals(0, answer.status(), answer.toString());
		Picture picture = (Picture) Jobs.elements(JobFile.load(job())).get(0);
		assertEquals(List.of(OperationKind.PRINT, OperationKind.KISS_CUT),
				picture.getOperations().stream().map(Operation::getKind).toList());
		assertNotNull(picture.getEdge());
		assertEquals(100, picture.getWidth(), 1e-9);
		assertEquals(0, take(artwork("plain.svg", TAG.formatted("")), "--set", "as=picture").status());
		assertNull(((Picture) Jobs.elements(JobFile.load(job())).get(0)).getEdge(), "printed alone, unless it is asked for");
	}

	@Test
	void layersAndNamesAreKeptAndWhatLiesOnAnotherStays() throws Exception {
		Answer answer = take(artwork("tag.svg", TAG.formatted("")));
		assertEquals(0, answer.status(), answer.toString());
		Job job = JobFile.load(job());
		assertEquals("tag", job.getTitle());
		assertEquals(List.of("Tag", "Lines"), job.getLayers().stream().map(Layer::getName).toList());
		assertEquals(List.of("card", "star"), names(job.getLayers().get(0)));
		assertEquals(List.of("fold", "stem"), names(job.getLayers().get(1)));
		assertEquals(OperationKind.CUT, kind(job, "star"));
		assertEquals(OperationKind.DRAW, kind(job, "fold"));
		assertTrue(answer.out().contains("repair ends-joined Lines at 90."), answer.out());
		assertTrue(answer.out().contains("layer Tag: 2 areas, 0 lines, 0 pictures, 2 repairs"), answer.out());
	}

	@Test
	void rulesSayWhatIsDoneAlongLines() throws Exception {
		Path file = artwork("tag.svg", TAG.formatted(""));
		Answer answer = take(file, "--set", "lines=crease", "--set", "areas=kiss-cut");
		assertEquals(0, answer.status(), answer.toString());
		assertEquals(OperationKind.CREASE, kind(JobFile.load(job()), "fold"));
		assertEquals(OperationKind.KISS_CUT, kind(JobFile.load(job()), "card"));
		assertEquals(1, take(file, "--set", "lines=cut").status());
	}

	@Test
	void withoutRepairPiecesStayApart() throws Exception {
		Answer answer = take(artwork("tag.svg", TAG.formatted("")), "--no-repair");
		assertEquals(0, answer.status(), answer.toString());
		assertFalse(answer.out().contains("repair "), answer.out());
		assertEquals(3, JobFile.load(job()).getLayers().get(1).getElements().size());
	}

	@Test
	void picturesLieWhereTheyLayAndArePrinted() throws Exception {
		String picture = "<g id='Photo'><image id='quay' x='10' y='20' width='40' height='20' transform='rotate(90 10 20)' "
				+ "preserveAspectRatio='none' xlink:href='data:image/png;base64," + image(8, 4) + "'/></g>";
		Answer answer = take(artwork("tag.svg", TAG.formatted(picture)), "--json");
		assertEquals(0, answer.status(), answer.toString());
		Picture quay = (Picture) JobFile.load(job()).getLayers().get(2).getElements().get(0);
		assertEquals("quay", quay.getName());
		assertEquals(OperationKind.PRINT, quay.getOperations().get(0).getKind());
		assertEquals(40, quay.getWidth(), 1e-9);
		assertEquals(20, quay.getHeight(), 1e-9);
		Matrix place = quay.getTransform();
		assertEquals(10, place.e(), 1e-9);
		assertEquals(20, place.f(), 1e-9);
		assertEquals(0, place.a(), 1e-9);
		assertEquals(1, place.b(), 1e-9);
		JsonObject json = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals(1, json.getAsJsonArray("layers").get(2).getAsJsonObject().get("pictures").getAsInt());
		// the way back: a picture that went out comes in at the same place
		Path svg = folder.resolve("again.svg");
		assertEquals(0, frisket("export", job().toString(), "--out", svg.toString(), "--set", "margin=0mm").status());
		assertTrue(Files.readString(svg).contains("<image id=\""), "no image in the export");
		assertEquals(0, take(svg).status());
		Picture again = Jobs.elements(JobFile.load(job())).stream().filter(Picture.class::isInstance)
				.map(Picture.class::cast).findFirst().orElseThrow();
		assertEquals(40, again.getWidth(), 0.01);
		assertEquals(20, again.getHeight(), 0.01);
		assertEquals(quay.getImage(), again.getImage());
	}

	@Test
	void whatCannotBeReadLeavesNoFile() throws Exception {
		for (Path file : List.of(artwork("broken.svg", "<svg"), artwork("empty.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>"),
				folder.resolve("missing.svg"), artwork("tag.xyz", ""))) {
			Answer answer = take(file);
			assertEquals(2, answer.status(), answer.toString());
			assertTrue(answer.err().contains(file.getFileName().toString()), answer.err());
			assertFalse(Files.exists(job()));
		}
		Path tag = artwork("tag.svg", TAG.formatted(""));
		assertEquals(2, take(tag, "--set", "lines=glue").status());
		assertEquals(2, take(tag, "--set", "polish=yes").status());
		assertEquals(2, frisket("import", tag.toString(), "--out", folder.resolve("a.svg").toString()).status());
		assertFalse(Files.exists(job()));
	}

	@Test
	void listNamesRulesAndFormats() {
		Answer answer = frisket("import", "--list");
		assertEquals(0, answer.status());
		assertTrue(answer.out().contains("lines=draw: "), answer.out());
		assertTrue(answer.out().contains(".dxf "), answer.out());
		assertTrue(answer.out().contains("reach="), answer.out());
	}

	@Test
	void artworkIsInspectedAsAJobIs() throws Exception {
		Path file = artwork("tag.svg", TAG.formatted(""));
		Answer answer = frisket("inspect", file.toString());
		assertEquals(0, answer.status(), answer.toString());
		Answer cut = frisket("inspect", file.toString(), "--set", "lines=cut");
		assertEquals(1, cut.status(), cut.toString());
		assertTrue(cut.out().contains("blocking contour-open "), cut.out());
		assertEquals(2, frisket("inspect", artwork("broken.dxf", "0\nSECTION\n").toString()).status());
	}
}
