package org.frisket.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.frisket.cli.Frisket;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Prints and cuts of place cards of Harbour Lane; looked at with poppler and librsvg, which share no code with the suite. */
class PrintAndCutVerbTest {

	/** 20 pixels to the mm. */
	private static final String DPI = "508";
	private static final double PER_MM = 20;
	private static final String CARD = "M0 0H80V50H0Z";

	@TempDir
	private Path folder;
	private Path file;
	private Job job;

	private record Answer(int status, String out, String err) {
		JsonObject json() {
			return JsonParser.parseString(out).getAsJsonObject();
		}
	}

	private Answer run(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private Answer print(String... more) {
		String[] arguments = new String[more.length + 6];
		List.of("print-and-cut", file.toString(), "--out", folder.resolve("out").toString(), "--studio",
				folder.resolve("studio").toString()).toArray(arguments);
		System.arraycopy(more, 0, arguments, 6, more.length);
		return run(arguments);
	}

	/** A card that is printed black and cut along its edge, on a sheet of 200 by 150 mm, with a square of its own. */
	@BeforeEach
	void makeTheJob() throws IOException {
		job = Jobs.create("job", "Place card");
		job.setNumber("10247");
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setColour("#000000");
		Outline card = Jobs.addOutline(layer, CARD);
		Jobs.addOperation(card, OperationKind.CUT);
		Outline square = Jobs.addOutline(layer, "M10 10H30V30H10Z");
		Jobs.addOperation(square, OperationKind.PRINT);
		Jobs.addOperation(square, OperationKind.DRAW);
		Sheet sheet = Jobs.addSheet(job, null, 200, 150);
		Jobs.addPlacement(sheet, card.getId(), 100, 75, 0);
		file = folder.resolve("card.frjob");
		save();
	}

	private void save() throws IOException {
		JobFile.save(job, file);
	}

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	private static void tool(String... command) throws IOException, InterruptedException {
		assumeTrue(Files.isExecutable(Path.of("/usr/bin", command[0])), command[0] + " is not installed");
		Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		assertEquals(0, process.waitFor(), said);
	}

	private BufferedImage printed(Path pdf) throws IOException, InterruptedException {
		tool("pdftoppm", "-gray", "-png", "-r", DPI, "-singlefile", pdf.toString(), folder.resolve("print").toString());
		return ImageIO.read(folder.resolve("print.png").toFile());
	}

	private BufferedImage cut(Path svg) throws IOException, InterruptedException {
		tool("rsvg-convert", "-d", DPI, "-p", DPI, "-b", "white", "-o", folder.resolve("cut.png").toString(), svg.toString());
		return ImageIO.read(folder.resolve("cut.png").toFile());
	}

	/** Middle of the ink of a row between two places, mm; a line's own colour does not matter. */
	private static double middle(BufferedImage image, double from, double to, double at, boolean down) {
		double sum = 0;
		double weighed = 0;
		for (int i = (int) Math.round(from * PER_MM); i < Math.round(to * PER_MM); i++) {
			int across = (int) (at * PER_MM);
			double ink = 1 - (image.getRGB(down ? across : i, down ? i : across) >> 16 & 0xff) / 255.0;
			sum += ink;
			weighed += ink * (i + 0.5);
		}
		return weighed / sum / PER_MM;
	}

	/** Where ink begins between a bare place and one in the ink, mm. */
	private static double edge(BufferedImage image, double bare, double inked, double at, boolean down) {
		double sum = 0;
		double low = Math.min(bare, inked);
		double high = Math.max(bare, inked);
		for (int i = (int) Math.round(low * PER_MM); i < Math.round(high * PER_MM); i++) {
			int across = (int) (at * PER_MM);
			sum += 1 - (image.getRGB(down ? across : i, down ? i : across) & 0xff) / 255.0;
		}
		return inked > bare ? inked - sum / PER_MM : inked + sum / PER_MM;
	}

	@Test
	void printAndCutLieOnEachOther() throws Exception {
		Answer answer = print("--json");
		assertEquals(0, answer.status(), answer.err() + answer.out());
		JsonObject sheet = answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject();
		JsonObject files = sheet.getAsJsonObject("files");
		assertTrue(files.get("print").getAsString().endsWith("-print.pdf"), files.toString());
		assertTrue(files.get("cut").getAsString().endsWith("-cut.svg"), files.toString());
		BufferedImage print = printed(Path.of(files.get("print").getAsString()));
		BufferedImage cut = cut(Path.of(files.get("cut").getAsString()));
		// renderers round up to whole pixels
		assertEquals(4000.5, print.getWidth(), 0.5);
		assertEquals(4000.5, cut.getWidth(), 0.5);
		// the square is at 70, 60 to 90, 80 mm: its printed edges and the lines that are drawn along them
		assertEquals(middle(cut, 69, 71, 70, false), edge(print, 69, 71, 70, false), 0.01);
		assertEquals(middle(cut, 89, 91, 70, false), edge(print, 91, 89, 70, false), 0.01);
		assertEquals(middle(cut, 59, 61, 80, true), edge(print, 59, 61, 80, true), 0.01);
		assertEquals(middle(cut, 79, 81, 80, true), edge(print, 81, 79, 80, true), 0.01);
		assertEquals(70, edge(print, 69, 71, 70, false), 0.01);
		String svg = Files.readString(Path.of(files.get("cut").getAsString()));
		assertFalse(svg.contains("data-operation=\"print\"") || svg.contains("<image"), svg);
		assertEquals(4, sheet.getAsJsonArray("marks").size());
		assertEquals("frisket:sheet:10247/1", sheet.get("code").getAsString());
		assertTrue(answer.json().get("printer").isJsonNull());
	}

	@Test
	void cutsFollowTheMarksInAScan() throws Exception {
		assertEquals(0, print("--keep-marks").status());
		Sheet kept = JobFile.load(file).getSheets().get(0);
		assertEquals(4, kept.getMarks().size());
		Path picture = scanned(1, 12, 8);
		Answer refused = print("--scan", picture.toString());
		assertEquals(2, refused.status());
		assertTrue(refused.err().contains("--dpi"), refused.err());
		Answer answer = print("--scan", picture.toString(), "--dpi", "254", "--json");
		assertEquals(0, answer.status(), answer.err() + answer.out());
		JsonObject fit = answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonObject("fit");
		JsonArray matrix = fit.getAsJsonArray("matrix");
		assertEquals(12, matrix.get(2).getAsDouble(), 0.02);
		assertEquals(8, matrix.get(5).getAsDouble(), 0.02);
		assertTrue(fit.get("rms").getAsDouble() < 0.01, fit.toString());
		Answer register = run("register", "--sheet", file + "#1", "--scan", picture.toString(), "--dpi", "254", "--json");
		assertEquals(0, register.status(), register.err());
		assertEquals(12, register.json().getAsJsonArray("matrix").get(2).getAsDouble(), 0.02);
	}

	/** A page of the print as a scan of 254 dots to the inch, so many mm further in. */
	private Path scanned(int page, int right, int down) throws Exception {
		Path pdf;
		try (var all = Files.list(folder.resolve("out"))) {
			pdf = all.filter(each -> each.toString().endsWith("-print.pdf")).findFirst().orElseThrow();
		}
		tool("pdftoppm", "-gray", "-png", "-r", "254", "-f", Integer.toString(page), "-singlefile", pdf.toString(),
				folder.resolve("page").toString());
		BufferedImage seen = ImageIO.read(folder.resolve("page.png").toFile());
		BufferedImage scan = new BufferedImage(seen.getWidth() + 20 * right, seen.getHeight() + 20 * down, BufferedImage.TYPE_BYTE_GRAY);
		scan.createGraphics().fillRect(0, 0, scan.getWidth(), scan.getHeight());
		scan.createGraphics().drawImage(seen, 10 * right, 10 * down, null);
		Path picture = folder.resolve("scan-" + page + ".png");
		ImageIO.write(scan, "png", picture.toFile());
		return picture;
	}

	/** A sheet that is printed on both sides, each scanned as it lay on the glass. */
	@Test
	void workOfTheBackFollowsTheMarksInAScanOfTheBack() throws Exception {
		Layer back = Jobs.addLayer(job, "Back");
		back.setBack(true);
		Jobs.addOperation(Jobs.addOutline(back, "M40 0V50"), OperationKind.CREASE);
		Jobs.addOperation(Jobs.addOutline(back, "M45 20H50V30H45Z"), OperationKind.PRINT);
		save();
		assertEquals(0, print("--keep-marks").status());
		String front = scanned(1, 12, 8).toString();
		String turned = scanned(2, 5, 9).toString();
		Answer twice = print("--scan-back", turned, "--measured-back", "1,1;2,2;3,3;4,4");
		assertEquals(2, twice.status());
		assertTrue(twice.err().contains("--scan-back"), twice.err());
		Answer answer = print("--scan", front, "--scan-back", turned, "--dpi", "254", "--json");
		assertEquals(0, answer.status(), answer.err() + answer.out());
		JsonArray matrix = answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonObject("backFit")
				.getAsJsonArray("matrix");
		assertEquals(5, matrix.get(2).getAsDouble(), 0.02);
		assertEquals(9, matrix.get(5).getAsDouble(), 0.02);
		// the crease is at 100 mm from the left of the front: seen from the back too, and 5 mm further in
		BufferedImage cut = cut(folder.resolve("out").resolve(answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject()
				.getAsJsonObject("files").get("cut-back").getAsString()));
		assertEquals(200 - 100 + 5, middle(cut, 100, 110, 60, false), 0.03);
		Answer other = print("--scan-back", front, "--dpi", "254");
		assertEquals(2, other.status(), "the front is not the back");
		assertTrue(other.err().startsWith("--scan-back: ") || other.err().contains("--scan-back:"), other.err());
	}

	@Test
	void artThatIsPrintedAsDotsIsTold() throws Exception {
		String art = "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm' viewBox='0 0 20 20'><pattern id='p' "
				+ "width='2' height='2' patternUnits='userSpaceOnUse'><path d='M0 0H1V2H0Z'/></pattern>"
				+ "<path d='M0 0H20V20H0Z' fill='url(#p)'/></svg>";
		Jobs.addPicture(job.getLayers().get(0), ImageBytes.of(art.getBytes(StandardCharsets.UTF_8)), "image/svg+xml", 20, 20);
		save();
		Answer answer = print("--json");
		assertEquals(0, answer.status(), answer.err() + answer.out());
		assertTrue(answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonArray("findings").toString()
				.contains("art-as-pixels"), answer.out());
		assertTrue(print().out().contains("600 to the inch"));
	}

	@Test
	void measuredMarksMoveTheCutsOrAreRefused() throws Exception {
		JsonArray marks = print("--json").json().getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonArray("marks");
		StringBuilder moved = new StringBuilder();
		StringBuilder mirrored = new StringBuilder();
		marks.forEach(each -> {
			double x = each.getAsJsonObject().get("x").getAsDouble();
			double y = each.getAsJsonObject().get("y").getAsDouble();
			moved.append(moved.isEmpty() ? "" : ";").append(x + 3).append(',').append(y + 2);
			mirrored.append(mirrored.isEmpty() ? "" : ";").append(200 - x).append(',').append(y);
		});
		Answer answer = print("--measured", moved.toString(), "--only", "1");
		assertEquals(0, answer.status(), answer.err());
		assertTrue(answer.out().contains("residuals 0.000 mm rms"), answer.out());
		Path svg;
		try (var all = Files.list(folder.resolve("out"))) {
			svg = all.filter(each -> each.toString().endsWith("-cut.svg")).findFirst().orElseThrow();
		}
		assertTrue(Files.readString(svg).contains("M63 52"), Files.readString(svg));
		byte[] before = Files.readAllBytes(svg);
		Answer wrong = print("--measured", mirrored.toString());
		assertEquals(2, wrong.status());
		assertTrue(wrong.err().contains("mirrored"), wrong.err());
		assertEquals("", wrong.out());
		assertEquals(-1, Arrays.mismatch(before, Files.readAllBytes(svg)));
	}

	/** A crease of a back layer, on a sheet that was measured on both sides. */
	@Test
	void workOfTheBackFollowsTheMarksOfTheBack() throws Exception {
		Layer back = Jobs.addLayer(job, "Back");
		back.setBack(true);
		Jobs.addOperation(Jobs.addOutline(back, "M40 0V50"), OperationKind.CREASE);
		save();
		JsonArray marks = print("--json").json().getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonArray("marks");
		StringBuilder front = new StringBuilder();
		StringBuilder turned = new StringBuilder();
		marks.forEach(each -> {
			double x = each.getAsJsonObject().get("x").getAsDouble();
			double y = each.getAsJsonObject().get("y").getAsDouble();
			front.append(front.isEmpty() ? "" : ";").append(x + 3).append(',').append(y + 2);
			turned.append(turned.isEmpty() ? "" : ";").append(200 - x - 4).append(',').append(y + 1);
		});
		Answer half = print("--measured", front.toString());
		assertTrue(half.out().contains("measured on the front only"), half.out());
		Answer both = print("--measured", front.toString(), "--measured-back", turned.toString());
		assertEquals(0, both.status(), both.err());
		assertTrue(both.out().contains("cuts on the back follow the print"), both.out());
		try (var all = Files.list(folder.resolve("out"))) {
			String svg = Files.readString(all.filter(each -> each.toString().endsWith("-cut-back.svg")).findFirst().orElseThrow());
			assertTrue(svg.contains("M96 51"), svg);
		}
		Answer wrong = print("--measured", front.toString(), "--measured-back", front.toString());
		assertEquals(2, wrong.status());
		assertTrue(wrong.err().startsWith("--measured-back") || wrong.err().contains("--measured-back:"), wrong.err());
	}

	@Test
	void thePrinterIsOfTheStudioOrOfAFile() throws Exception {
		StudioFolder studio = new StudioFolder(folder.resolve("studio")).openForWriting();
		new PrinterProfiles(studio.preferences()).keep(new PrinterProfile("Front desk", 1.002, 0.999, 0, LocalDate.of(2026, 11, 30), 4));
		Answer kept = print("--printer-profile", "front desk");
		assertEquals(0, kept.status(), kept.err());
		assertTrue(kept.out().contains("Front desk"), kept.out());
		Path json = folder.resolve("printer.json");
		Files.writeString(json, "{\"name\":\"Back room\",\"scaleX\":1.003,\"scaleY\":1,\"skew\":0.1,\"measured\":\"2026-11-29\",\"marks\":4}");
		JsonObject answer = print("--printer-profile", json.toString(), "--json").json();
		assertEquals(1.003, answer.getAsJsonObject("printer").get("scaleX").getAsDouble());
		Files.writeString(json, "{\"name\":\"Back room\"}");
		for (String wrong : List.of(json.toString(), "Attic")) {
			Answer refused = print("--printer-profile", wrong);
			assertEquals(2, refused.status());
			assertTrue(refused.err().contains(wrong), refused.err());
			assertFalse(refused.err().contains("mistake of the program"), refused.err());
		}
	}

	@Test
	void otherFormatsAndWhatIsWrong() throws Exception {
		for (String format : List.of("pdf", "dxf", "plt", "ngc")) {
			Answer answer = print("--format", format, "--json");
			assertEquals(0, answer.status(), format + answer.err() + answer.out());
			assertTrue(Files.size(Path.of(answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonObject("files")
					.get("cut").getAsString())) > 100);
			assertEquals(format.equals("pdf"), answer.json().get("marksShown").getAsBoolean());
		}
		assertEquals(2, print("--format", "xyz").status());
		assertEquals(2, print("--sheet", "A4").status());
		assertEquals(2, print("--only", "7").status());
		assertEquals(2, print("--bleed", "70mm").status());
		job.getSheets().clear();
		save();
		Answer none = print();
		assertEquals(2, none.status());
		assertTrue(none.err().contains("--sheet"), none.err());
		assertEquals(0, print("--sheet", "A4").status());
		assertEquals(1, print("--sheet", "70x40mm").status());
	}
}
