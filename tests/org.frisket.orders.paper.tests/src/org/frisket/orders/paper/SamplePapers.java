package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.layout.Paper;
import org.frisket.run.Rate;
import org.frisket.run.Workshop;
import org.frisket.sheets.GuestFiles;
import org.frisket.toolpath.RunChoices;

/** Jobs of Harbour Lane Paperworks for papers, and what independent programs say of those. */
public final class SamplePapers {

	public static final PaperForm A4 = new PaperForm(Paper.A4, false, ZoneOffset.UTC);
	public static final String BLUE = "#2a4d8f";

	private SamplePapers() {
	}

	/** Twelve gift tags of 80 by 50 mm with a line to write on, on two sheets. */
	public static Job tags() {
		Job job = Jobs.create("tags", "Gift tags for the harbour fair");
		job.setNumber("10247");
		job.setCustomer("Tern Bookshop");
		job.setDue(LocalDate.of(2027, 3, 1));
		job.setQuantity(12);
		job.setStage(Stage.APPROVED);
		job.setNotes("Thread them with blue ribbon.\nCall before delivery.");
		stage(job, Stage.ORDERED, Stage.DESIGNED, "2027-02-10T09:00:00Z", "Ottoline");
		stage(job, Stage.DESIGNED, Stage.APPROVED, "2027-02-11T09:00:00Z", "Tern Bookshop");
		Outline tag = outline(job, "Harbour blue", BLUE, "harbour-blue", "Tag", "M0 0H80V50H0Z");
		Outline line = Jobs.addOutline(job.getLayers().get(0), "M10 25H70");
		line.setName("Writing line");
		Jobs.addOperation(line, OperationKind.DRAW);
		for (int number = 0; number < 2; number++) {
			Sheet sheet = Jobs.addSheet(job, "harbour-blue", 300, 200);
			for (int i = 0; i < 6; i++) {
				Jobs.addPlacement(sheet, tag.getId(), 55 + 95 * (i % 3), 45 + 70 * (i / 3), 0);
			}
		}
		return job;
	}

	private static void stage(Job job, Stage from, Stage to, String at, String who) {
		StageChange change = FrisketFactory.INSTANCE.createStageChange();
		change.setFrom(from);
		change.setTo(to);
		change.setAt(Instant.parse(at));
		change.setWho(who);
		job.getHistory().add(change);
	}

	/** One that is cut, on a layer of its own. */
	public static Outline outline(Job job, String layer, String colour, String stock, String name, String path) {
		Layer on = Jobs.addLayer(job, layer);
		on.setColour(colour);
		on.setStock(stock);
		Outline outline = Jobs.addOutline(on, path);
		outline.setName(name);
		Jobs.addOperation(outline, OperationKind.CUT);
		return outline;
	}

	/** Of a stock that is 0.45 EUR a sheet. */
	public static Workshop workshop() {
		Stock blue = Stock.named("Harbour blue 216 g").id("harbour-blue").family(StockFamily.CARD).grammage(new BigDecimal(216))
				.price(new BigDecimal("0.45")).currency(Price.currency("EUR")).build();
		return new Workshop(Machine.plain(), new DeskState(List.of(blue), List.of(), List.of(), Map.of(), List.of(), List.of(),
				List.of(), false));
	}

	public static Optional<Rate> rate() {
		return Optional.of(Rate.parse("36.00 EUR"));
	}

	public static JobWork work(Job job) {
		return work(job, workshop(), rate(), Map.of());
	}

	public static JobWork work(Job job, Workshop workshop, Optional<Rate> rate, Map<String, Job> guests) {
		JobWork.Means means = new JobWork.Means(new JobPreparer(FontLibraries.installed()), LayerLimits.same(Limits.CARD), workshop,
				RunChoices.plain(), rate, Tolerance.DEFAULT);
		return JobWork.of(job, new GuestFiles.Guests(guests, Map.of(), List.of()), means, Monitor.NONE);
	}

	/** What writes a paper. */
	public interface Writing {
		void to(OutputStream out) throws IOException;
	}

	public static byte[] bytes(Writing writing) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		writing.to(out);
		return out.toByteArray();
	}

	/** What a program answers of a file; the test is left out where it is not installed. */
	public static byte[] ask(int status, String... command) throws Exception {
		assumeTrue(Files.isExecutable(Path.of("/usr/bin", command[0])), command[0] + " is not installed");
		Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		byte[] output = process.getInputStream().readAllBytes();
		assertEquals(status, process.waitFor(), String.join(" ", command));
		return output;
	}

	/** What a reader finds on the pages. */
	public static String text(byte[] pdf, Path folder) throws Exception {
		Path file = Files.write(folder.resolve("paper.pdf"), pdf);
		return new String(ask(0, "pdftotext", "-layout", file.toString(), "-"), StandardCharsets.UTF_8);
	}

	/** The same with all words in one line. */
	public static String words(byte[] pdf, Path folder) throws Exception {
		return text(pdf, folder).replaceAll("\\s+", " ");
	}

	/** Its pages as pictures. @param dpi of them */
	public static List<Path> pictures(byte[] pdf, int dpi, Path folder) throws Exception {
		Path file = Files.write(folder.resolve("paper.pdf"), pdf);
		ask(0, "pdftoppm", "-r", String.valueOf(dpi), "-png", file.toString(), folder.resolve("page").toString());
		try (var files = Files.list(folder)) {
			return new ArrayList<>(files.filter(each -> each.toString().endsWith(".png")).sorted().toList());
		}
	}

	/** That the document is one, as qpdf sees it. */
	public static void check(byte[] pdf, Path folder) throws Exception {
		ask(0, "qpdf", "--check", Files.write(folder.resolve("paper.pdf"), pdf).toString());
	}
}
