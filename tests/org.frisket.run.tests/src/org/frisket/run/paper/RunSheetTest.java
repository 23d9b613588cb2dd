package org.frisket.run.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.material.Price;
import org.frisket.material.advice.Caution;
import org.frisket.material.tools.Edge;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.layout.Paper;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.run.RunCost;
import org.frisket.run.RunMaker;
import org.frisket.run.Workshop;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.RunChoices;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The run sheet as poppler reads and paints it, which is no part of this project. */
class RunSheetTest {

	private static final int PIXELS_PER_MM = 8;
	private static final double[] SHEET = { 300, 200 };

	private static Locale usual;
	private static LaidSheet laid;
	private static MachineRun run;

	@TempDir
	private Path folder;

	@BeforeAll
	static void makeARun() {
		usual = Locale.getDefault();
		Locale.setDefault(Locale.ENGLISH);
		Job job = Jobs.create("job", "Place cards");
		job.setNumber("2026-117");
		job.setCustomer("Harbour Lane Ferries");
		job.setDue(LocalDate.of(2026, 12, 4));
		Layer layer = Jobs.addLayer(job, "Card");
		Sheet sheet = Jobs.addSheet(job, "Ivory card", SHEET[0], SHEET[1]);
		OperationKind[] kinds = { OperationKind.DRAW, OperationKind.CREASE, OperationKind.PERFORATE, OperationKind.KISS_CUT,
				OperationKind.CUT, OperationKind.PRINT };
		for (int i = 0; i < kinds.length; i++) {
			var outline = Jobs.addOutline(layer, "M0 0H40V30C30 40 10 40 0 30Z");
			// apart, or they would be one part
			outline.setTransform(Matrix.translation(60 * i, 0));
			Jobs.addOperation(outline, kinds[i]).setPasses(kinds[i] == OperationKind.CUT ? 2 : 1);
			for (int row = 0; row < 4; row++) {
				Jobs.addPlacement(sheet, outline.getId(), 30 + 46 * i, 27 + 47 * row, 0);
			}
		}
		laid = LaidSheets.of(job, Map.of(job.getId(), SampleJobs.prepared(job)), Tolerance.DEFAULT, Monitor.NONE).get(0);
		run = RunMaker.of(laid.content(), Workshop.plain(), RunChoices.plain(), Monitor.NONE);
	}

	@AfterAll
	static void giveTheLanguageBack() {
		Locale.setDefault(usual);
	}

	private static Optional<Price> price(String amount) {
		return Optional.of(new Price(new BigDecimal(amount), Currency.getInstance("EUR")));
	}

	private static RunCost cost() {
		List<RunCost.ToolUse> tools = run.work().stream().map(work -> new RunCost.ToolUse(work.tool(), 1.25,
				work.tool().edge().map(edge -> new Edge(12.5, 100)))).toList();
		return new RunCost(new RunCost.Seconds(610.2, 95, 30, 120), tools, price("0.80"), price("7.20"),
				List.of(new RunCost.Share("job", "2026-117", 31_250, 700, price("0.60"), price("5.90")),
						new RunCost.Share("other", "2026-120 Gift tags", 8_000, 155.2, price("0.20"), price("1.30"))));
	}

	private static RunSheetForm form(Paper paper, boolean inches) {
		return new RunSheetForm(Optional.of(laid.sheet()), "Ivory card", paper, inches);
	}

	private static byte[] written(MachineRun of, RunSheetForm form) throws Exception {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		RunSheet.write(of, laid.content(), cost(), form, out);
		return out.toByteArray();
	}

	private byte[] output(byte[] pdf, String tool, String... options) throws Exception {
		assumeTrue(Files.isExecutable(Path.of("/usr/bin", tool)), tool + " is not installed");
		List<String> command = new ArrayList<>(List.of(tool));
		command.addAll(List.of(options));
		command.add(Files.write(folder.resolve("run.pdf"), pdf).toString());
		if (!tool.equals("pdfinfo")) {
			command.add("-");
		}
		Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		byte[] output = process.getInputStream().readAllBytes();
		assertEquals(0, process.waitFor(), command.toString());
		return output;
	}

	private String text(byte[] pdf) throws Exception {
		return new String(output(pdf, "pdftotext", "-layout"), StandardCharsets.UTF_8);
	}

	private static void assertSays(String text, String... words) {
		for (String word : words) {
			assertTrue(text.contains(word), word + " in " + text);
		}
	}

	@Test
	void itSaysWhatIsToBeDoneForWhomAndWithWhat() throws Exception {
		String text = text(written(run, form(Paper.A4, false)));
		assertSays(text, "2026-117", "Place cards", "Harbour Lane Ferries", "Dec 4, 2026", "Ivory card", "Sheet 1",
				"300 × 200 mm", "not described");
		for (LegWork work : run.work()) {
			assertSays(text, LegText.name(work.tool()), "pressure " + Figures.number(work.settings().pressure(), 3));
		}
		assertSays(text, "Stop. Take out: pen. Put in: creasing wheel.", "2 passes, all of them in the run: set the machine to 1", "by rules of thumb");
		assertSays(text, "14:16 min", "10:11 min", "6.25 m", "worn 12.5 m of 100 m", "2026-120 Gift tags", "312.5 cm²",
				"6.50 EUR", "8.00 EUR");
		assertSays(text, "Set up", "Test cut is good", "Run done", "Parts counted");
	}

	@Test
	void legsStandInTheirOrder() throws Exception {
		String text = text(written(run, form(Paper.A4, false)));
		int last = text.indexOf("In this order");
		for (String operation : List.of("Draw –", "Crease –", "Perforate –", "Kiss cut –", "Cut –")) {
			int at = text.indexOf(operation);
			assertTrue(at > last, operation);
			last = at;
		}
	}

	@Test
	void cautionsDeferToTheManual() throws Exception {
		MachineRun careless = with(List.of(), List.of());
		String text = text(written(careless, form(Paper.A4, false))).replaceAll("\\s+", " ");
		assertSays(text, "Keep hands, hair and loose sleeves away", "hold blades only by the holder", "follow the manual");
		assertFalse(text.contains("Do not run this sheet"), text);
		assertEquals(text.indexOf("Keep hands"), text.lastIndexOf("Keep hands"), "each once");
	}

	@Test
	void whatForbidsTheRunStandsBeforeAllOthers() throws Exception {
		MachineRun forbidden = with(List.of(new Caution("heat.fumes", true, "It gives off fumes.")),
				List.of(Finding.plain("beyond-reach", Severity.BLOCKING, "e1", new Point(0, 0), "A part is out of reach.",
						"Move it.")));
		String text = text(written(forbidden, form(Paper.A4, false))).replaceAll("\\s+", " ");
		assertSays(text, "Do not run this sheet like this. A part is out of reach. Move it.",
				"Do not run this sheet like this. It gives off fumes.");
		assertTrue(text.indexOf("fumes") < text.indexOf("In this order"), text);
	}

	private static MachineRun with(List<Caution> cautions, List<Finding> findings) {
		return new MachineRun(run.machine(), run.carriage(), run.run(), run.work().stream()
				.map(work -> new LegWork(work.tool(), work.settings(), work.reasons(), cautions)).toList(), run.timeline(),
				findings);
	}

	@Test
	void longListsGoOnOverPagesThatAreCounted() throws Exception {
		List<LegWork> wordy = run.work().stream().map(work -> new LegWork(work.tool(), work.settings(),
				Collections.nCopies(12, "It went well with this tool on a card like this one, more than once. ".repeat(3)),
				List.of())).toList();
		byte[] pdf = written(new MachineRun(run.machine(), run.carriage(), run.run(), wordy, run.timeline()),
				form(Paper.LETTER, true));
		String facts = new String(output(pdf, "pdfinfo"), StandardCharsets.UTF_8);
		assertTrue(facts.contains("612 x 792 pts (letter)"), facts);
		String[] pages = text(pdf).split("\f");
		assertTrue(pages.length > 2, facts);
		for (int i = 0; i < pages.length; i++) {
			assertSays(pages[i], "page " + (i + 1) + " of " + pages.length, "2026-117");
		}
		assertSays(pages[pages.length - 1], "Parts counted");
		assertSays(pages[0], "11.811 × 7.874 in");
	}

	@Test
	void pictureShowsLinesWhereTheyAreInTheScaleItSays() throws Exception {
		byte[] pdf = written(run, form(Paper.A4, false));
		BufferedImage image = ImageIO.read(new ByteArrayInputStream(output(pdf, "pdftocairo", "-png", "-singlefile", "-r",
				String.valueOf(PIXELS_PER_MM * 25.4))));
		Column column = new Column(12, Paper.A4.width() - 24);
		SheetPicture picture = new SheetPicture(run, laid.content(), new Bounds(0, 0, SHEET[0], SHEET[1]),
				new Figures(false), column);
		assertEquals(186 / 300.0, picture.scale(), 1e-9);
		assertSays(text(pdf), "50 mm at a scale of 1 : 1.61");
		// the cut parts are the fifth of six columns: 20 mm to each side of 214 mm
		double left = 12 + (214 - 20) * picture.scale();
		double right = 12 + (214 + 20) * picture.scale();
		List<Double> found = columnsOf(image, new Color(0x0b5f62), left - 4, right + 4);
		assertEquals(left, found.get(0), 0.3);
		assertEquals(right, found.get(1), 0.3);
	}

	/** First and last x in mm, within limits, where so many pixels of a colour stand over each other that it is a line. */
	private static List<Double> columnsOf(BufferedImage image, Color colour, double from, double to) {
		List<Double> found = new ArrayList<>();
		for (int x = (int) (from * PIXELS_PER_MM); x < to * PIXELS_PER_MM; x++) {
			int count = 0;
			for (int y = 0; y < image.getHeight() / 2; y++) {
				Color at = new Color(image.getRGB(x, y));
				if (Math.abs(at.getRed() - colour.getRed()) < 70 && Math.abs(at.getGreen() - colour.getGreen()) < 50
						&& Math.abs(at.getBlue() - colour.getBlue()) < 50) {
					count++;
				}
			}
			if (count > 4 * 20 * PIXELS_PER_MM / 2) {
				found.add((x + 0.5) / PIXELS_PER_MM);
			}
		}
		assertFalse(found.isEmpty(), "no line");
		return List.of(found.get(0), found.get(found.size() - 1));
	}

	@Test
	void sameRunIsTheSameFile() throws Exception {
		byte[] first = written(run, form(Paper.A4, false));
		Thread.sleep(1100); // a clock that was asked would show another second
		assertArrayEquals(first, written(run, form(Paper.A4, false)));
		assertFalse(new String(output(first, "pdfinfo"), StandardCharsets.UTF_8).contains("Date:"));
	}

	@Test
	void sheetIsFoundByItsLayer() throws Exception {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		RunSheet.write(run, laid.content(), cost(), out);
		assertSays(text(out.toByteArray()), "300 × 200 mm");
	}

	@Test
	void jobOnTheBenchAndNothingAtAllAreWrittenToo() throws Exception {
		for (Job job : List.of(SampleJobs.giftTag(), Jobs.create("none", null))) {
			var content = SampleJobs.prepared(job);
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			RunSheet.write(RunMaker.of(content, Workshop.plain(), RunChoices.plain(), Monitor.NONE), content,
					new RunCost(new RunCost.Seconds(0, 0, 0, 0), List.of(), Optional.empty(), Optional.empty(), List.of()), out);
			assertSays(text(out.toByteArray()), "as on the bench");
		}
	}
}
