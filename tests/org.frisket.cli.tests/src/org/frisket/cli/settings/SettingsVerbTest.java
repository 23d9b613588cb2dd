package org.frisket.cli.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.cli.Frisket;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.studio.Studio;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class SettingsVerbTest {

	@TempDir
	private Path folder;
	private String out;
	private String err;

	@AfterEach
	void forgetTheStudio() {
		Studio.choose(Optional.empty());
	}

	private int settings(String... arguments) {
		List<String> all = new ArrayList<>(List.of("settings"));
		all.addAll(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		ByteArrayOutputStream answers = new ByteArrayOutputStream();
		ByteArrayOutputStream complaints = new ByteArrayOutputStream();
		int status = Frisket.run(all.toArray(String[]::new), new PrintStream(answers, true, StandardCharsets.UTF_8),
				new PrintStream(complaints, true, StandardCharsets.UTF_8));
		out = answers.toString(StandardCharsets.UTF_8);
		err = complaints.toString(StandardCharsets.UTF_8);
		return status;
	}

	@Test
	void aTestSheetIsMadeJudgedAndAskedAgain() throws Exception {
		Path job = folder.resolve("sheet.frjob");
		Path svg = folder.resolve("sheet.svg");
		assertEquals(0, settings("test-sheet", "--stock-family", "card", "--grammage", "216", "--across",
				"pressure=10..30/5", "--down", "speed=10..50/10", "--day", "2031-05-17", "--out", job.toString(), "--out",
				svg.toString()), () -> err);
		assertTrue(out.startsWith("sheet-1"), out);
		assertTrue(Files.readString(svg).contains("data-operation=\"draw\""));
		assertTrue(Files.size(job) > 1000);
		Path chart = folder.resolve("chart.svg");
		assertEquals(0, settings("verdicts", "sheet-1", "A1=not-through", "A2=not-through", "A3=not-through",
				"A4=not-through", "A5=not-through", "*=through", "--chart", chart.toString()), () -> err);
		assertTrue(out.contains("25 of 25") && out.contains("advised"), out);
		assertTrue(Files.readString(chart).contains("advised"));
		assertEquals(0, settings("advise", "--family", "card", "--grammage", "216", "--json"), () -> err);
		JsonObject advice = JsonParser.parseString(out).getAsJsonObject();
		assertEquals("good", advice.get("confidence").getAsString());
		assertEquals(15, advice.getAsJsonObject("window").get("from").getAsDouble());
		assertEquals(22, advice.getAsJsonObject("settings").get("pressure").getAsDouble());
		assertTrue(advice.getAsJsonObject("window").get("toMost").isJsonNull());
		assertEquals(0, settings("trial", "list"));
		assertEquals(25, out.lines().count());
	}

	@Test
	void aSheetThatCannotBeWrittenIsNotKept() {
		assertEquals(2, settings("test-sheet", "--family", "card", "--across", "pressure=10,20", "--down", "speed=10",
				"--out", folder.resolve("none/sheet.svg").toString()));
		assertEquals(2, settings("test-sheet", "--family", "card", "--across", "pressure=10,20", "--down", "speed=10",
				"--size", "50mm", "--out", folder.resolve("sheet.svg").toString()));
		assertTrue(err.contains("from 5 to 40 mm"), err);
		assertEquals(2, settings("verdicts", "sheet-1"));
		assertTrue(err.contains("no test sheet"), err);
	}

	@Test
	void toolsMachinesTrialsAndRunsAreKept() {
		assertEquals(0, settings("machine", "add", "harbour", "--set", "pressure-least=1", "--set", "pressure-most=33"),
				() -> err);
		assertEquals(0, settings("tool", "add", "b1", "--kind", "blade", "--set", "dull-after=20"), () -> err);
		assertEquals(0, settings("trial", "add", "--family", "card", "--grammage", "216", "--machine", "harbour", "--tool",
				"b1", "--pressure", "12", "--speed", "30", "--exposure", "0.4mm", "--verdict", "through"), () -> err);
		assertEquals("trial-1", out.strip());
		assertEquals(0, settings("run", "add", "job-7", "--family", "card", "--stock", "harbour-white", "--tool", "b1",
				"--machine", "harbour", "--pressure", "12", "--speed", "30", "--length", "18000mm", "--verdict", "through",
				"--remark", "gift tags"), () -> err);
		assertTrue(out.contains("18 m") && out.contains("20 m"), out);
		assertEquals(0, settings("run", "propose", "job-7", "--family", "card", "--stock", "harbour-white", "--tool", "b1",
				"--machine", "harbour"), () -> err);
		assertTrue(out.contains("pressure 12") && out.contains("gift tags"), out);
		assertEquals(0, settings("tool", "list"));
		assertTrue(out.contains("worn=18"), out);
		assertEquals(0, settings("machine", "list", "--questions"));
		assertTrue(out.contains("pressure-step"));
	}

	@Test
	void machinesAndToolsAreTakenAwayAndWhatWasTriedStays() {
		assertEquals(0, settings("machine", "add", "harbour", "--set", "name=Harbour cutter"), () -> err);
		assertEquals(0, settings("tool", "add", "b1", "--kind", "blade"), () -> err);
		assertEquals(0, settings("trial", "add", "--family", "card", "--grammage", "216", "--machine", "harbour", "--tool",
				"b1", "--pressure", "12", "--speed", "30", "--verdict", "through"), () -> err);
		assertEquals(0, settings("machine", "remove", "harbour"), () -> err);
		assertEquals(0, settings("tool", "remove", "b1"), () -> err);
		assertEquals(0, settings("machine", "list"));
		assertEquals("", out);
		assertEquals(0, settings("tool", "list"));
		assertEquals("", out);
		assertEquals(0, settings("trial", "list"));
		assertTrue(out.contains("trial-1"), out);
		assertEquals(2, settings("machine", "remove", "harbour"));
		assertTrue(err.contains("no machine “harbour”"), err);
		assertEquals(2, settings("tool", "remove", "b1"));
		assertTrue(err.contains("no tool “b1”"), err);
	}

	/** A square of 50 mm and a line of 30 mm by it: 230 mm to cut in one pass, 30 mm to draw. */
	@Test
	void lengthOfARunIsMeasuredInTheJobsFile() throws Exception {
		Job job = Jobs.create("gift-tag", "Gift tag");
		Layer layer = Jobs.addLayer(job, "Tags");
		layer.setStock("harbour-white");
		Jobs.addOperation(Jobs.addOutline(layer, "M0,0 H50 V50 H0 Z"), OperationKind.CUT);
		Outline line = Jobs.addOutline(layer, "M60,0 H90");
		Jobs.addOperation(line, OperationKind.CUT);
		Jobs.addOperation(line, OperationKind.DRAW);
		Path file = folder.resolve("tag.frjob");
		JobFile.save(job, file);
		String[] run = { "run", "add", file.toString(), "--family", "card", "--stock", "harbour-white", "--pressure", "12",
				"--speed", "30", "--passes", "2", "--verdict", "through" };
		assertEquals(0, settings(run), () -> err);
		assertEquals(0, settings("run", "list", "--job", "gift-tag"));
		assertTrue(out.contains("passes 2") && out.contains("460 mm"), out);
		List<String> creased = new ArrayList<>(List.of(run));
		creased.addAll(List.of("--operation", "crease"));
		assertEquals(2, settings(creased.toArray(String[]::new)));
		assertTrue(err.contains("nothing that is shown has the operation crease"), err);
		run[2] = "gift-tag";
		assertEquals(2, settings(run));
		assertTrue(err.contains("--length"), err);
	}

	@Test
	void rulesOfThumbAreTheStudiosToChange() {
		assertEquals(0, settings("rules"), () -> err);
		assertTrue(out.contains("start-pressure=30:") && out.contains("rule of thumb, no source"), out);
		assertFalse(out.contains("rule of the studio"), out);
		assertEquals(0, settings("advise", "--family", "card", "--grammage", "216"));
		assertTrue(out.contains("common practice, no source") && !out.contains("rule of the studio"), out);
		assertEquals(0, settings("rules", "--set", "start-pressure=45", "--set", "one-pass-to=216"), () -> err);
		assertEquals(0, settings("rules", "--json"));
		JsonObject rules = JsonParser.parseString(out).getAsJsonObject();
		assertEquals("45", rules.getAsJsonObject("start-pressure").get("value").getAsString());
		assertTrue(rules.getAsJsonObject("start-pressure").get("own").getAsBoolean());
		assertEquals("30", rules.getAsJsonObject("start-pressure").get("usual").getAsString());
		assertFalse(rules.getAsJsonObject("one-pass-to").get("own").getAsBoolean(), "what is usual is nobody's own");
		assertEquals(0, settings("advise", "--family", "card", "--grammage", "216"));
		assertTrue(out.startsWith("exposure") && out.contains("pressure 45 ") && out.contains("rule of the studio"), out);
		assertEquals(2, settings("rules", "--set", "start-pressure=450"));
		assertEquals(2, settings("rules", "--set", "haste=4"));
		assertTrue(err.contains("haste"), err);
		assertEquals(0, settings("rules", "--reset", "--set", "bulk=1.3"));
		assertTrue(out.contains("start-pressure=30:") && out.contains("bulk=1.3:"), out);
		assertEquals(0, settings("rules", "--reset"));
		assertFalse(out.contains("rule of the studio"), out);
	}

	/** What came of each run stays with the stock and the job, down to the reorder. */
	@Test
	void aReorderProposesWhatWorked() {
		shelve("--name", "Harbour pearl", "--id", "pearl-300", "--family", "card", "--weight", "300gsm", "--caliper", "0.32mm",
				"--abrasion", "1.5");
		assertEquals(0, settings("tool", "add", "b1", "--kind", "blade", "--set", "dull-after=60"), () -> err);
		String[] with = { "--stock", "pearl-300", "--tool", "b1", "--speed", "30", "--exposure", "0.4mm" };
		run("job-7", "12", "not-through", with);
		run("job-7", "16", "through", with);
		assertFalse(out.contains("caution"), "15 m of 60 so far: " + out);
		assertEquals(0, settings("advise", "--stock", "pearl-300", "--tool", "b1", "--job", "job-7", "--json"), () -> err);
		JsonObject before = JsonParser.parseString(out).getAsJsonObject().getAsJsonObject("before");
		assertEquals(16, before.getAsJsonObject("settings").get("pressure").getAsDouble());
		assertEquals("run-2", before.get("run").getAsString());
		assertEquals(0, settings("advise", "--stock", "pearl-300", "--tool", "b1", "--job", "job-8"));
		assertTrue(out.contains("pressure 16") && out.contains("another job with the same stock"), out);
		assertEquals(0, settings("advise", "--stock", "pearl-300", "--tool", "b1", "--job", "job-7", "--length", "25000mm"));
		assertFalse(out.contains("counts as dull"), "15 + 25 × 1.5 m are less than 60: " + out);
		assertEquals(0, settings("advise", "--stock", "pearl-300", "--tool", "b1", "--job", "job-7", "--length", "31000mm"));
		assertTrue(out.contains("60 m after which it counts as dull within this work"), out);
		run("job-7", "16", "torn", with);
		assertEquals(0, settings("advise", "--stock", "pearl-300", "--tool", "b1", "--job", "job-7"));
		assertTrue(out.contains("failed 1 times"), out);
		assertEquals(0, settings("run", "list", "--stock", "pearl-300", "--job", "job-7"));
		assertEquals(3, out.lines().count(), out);
		assertTrue(out.lines().toList().get(1).contains("pressure 16, speed 30, passes 1, 5000 mm: through"), out);
		assertEquals(0, settings("run", "list", "--job", "job-9"));
		assertEquals("", out);
	}

	private void run(String job, String pressure, String verdict, String... with) {
		List<String> arguments = new ArrayList<>(List.of("run", "add", job, "--pressure", pressure, "--verdict", verdict,
				"--length", "5000mm"));
		arguments.addAll(List.of(with));
		assertEquals(0, settings(arguments.toArray(String[]::new)), () -> err);
	}

	private void shelve(String... arguments) {
		List<String> all = new ArrayList<>(List.of("stock", "add"));
		all.addAll(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		ByteArrayOutputStream complaints = new ByteArrayOutputStream();
		assertEquals(0, Frisket.run(all.toArray(String[]::new), new PrintStream(new ByteArrayOutputStream()),
				new PrintStream(complaints, true, StandardCharsets.UTF_8)), complaints::toString);
	}

	@Test
	void stockOnTheShelfNeedsNoMeasures() {
		shelve("--name", "Harbour pearl", "--id", "pearl-300", "--family", "card", "--weight", "300gsm", "--caliper", "0.32mm");
		assertEquals(0, settings("advise", "--stock", "pearl-300"), () -> err);
		assertTrue(out.contains("exposure 0.42 mm") && out.contains("passes 2"), out);
		assertEquals(0, settings("advise", "--stock", "pearl-300", "--caliper", "0.5mm"), () -> err);
		assertTrue(out.contains("exposure 0.6 mm"), "what is said on the line prevails: " + out);
		assertEquals(2, settings("advise", "--stock", "velvet"));
		assertTrue(err.contains("velvet") && err.contains("--family"), err);
		assertEquals(0, settings("advise", "--stock", "velvet", "--family", "fabric"), "a stock of others may have an id");
		assertEquals(2, settings("advise"));
		assertTrue(err.contains("--family"), err);
	}

	@Test
	void calibrationWritesSheetsAndReadsThem() throws Exception {
		Path sheet = folder.resolve("offset.svg");
		assertEquals(0, settings("calibrate", "offset", "--out", sheet.toString()), () -> err);
		assertTrue(Files.readString(sheet).contains("data-operation=\"cut\""));
		assertEquals(0, settings("calibrate", "offset", "--read", "0.2mm=-0.08mm", "--read", "0.25mm=-0.03mm", "--read",
				"0.3mm=0.03mm", "--read", "0.35mm=0.1mm"), () -> err);
		assertTrue(out.startsWith("offset 0.28"), out);
		assertEquals(0, settings("calibrate", "scale", "--cross", "200x200mm", "--across", "200.6mm", "--down", "199mm"),
				() -> err);
		assertTrue(out.contains("x: multiply lengths with 0.99701 ± 0.00050"), out);
		assertEquals(2, settings("calibrate", "scale", "--cross", "200x200mm", "--across", "200.6mm", "--down", "199mm",
				"--keep"));
		assertTrue(err.contains("--machine"), err);
		assertEquals(0, settings("machine", "add", "harbour"), () -> err);
		assertEquals(0, settings("calibrate", "scale", "--machine", "harbour", "--cross", "200x200mm", "--across", "200.6mm",
				"--down", "199mm", "--keep"), () -> err);
		assertEquals(0, settings("machine", "list"));
		assertTrue(out.contains("scale-x=0.99701") && out.contains("scale-y=1.00503"), out);
		assertEquals(0, settings("calibrate", "scale", "--out", folder.resolve("cross.frjob").toString()), () -> err);
	}

	@Test
	void plasticOnAHotMachineIsBlocked() {
		assertEquals(0, settings("machine", "add", "beam", "--set", "process=laser"), () -> err);
		assertEquals(1, settings("advise", "--family", "film", "--caliper", "0.08mm", "--machine", "beam"));
		assertTrue(out.contains("blocking:") && out.contains("PVC"), out);
	}

	@Test
	void wrongUseIsRefusedWithTheReason() {
		assertEquals(2, settings("advise", "--family", "card", "--tool", "b9"));
		assertTrue(err.contains("b9"), err);
		assertEquals(2, settings("advise", "--family", "card", "--operation", "burn"));
		assertTrue(err.contains("kissCut"), err);
		assertEquals(2, settings("advise", "--family", "card", "--grammage", "-3"));
		assertEquals(2, settings("advise", "--family", "card", "--rule", "bulk=thick"));
		assertTrue(err.contains("thick"), err);
		assertEquals(2, settings("machine", "add", "m", "--set", "height=20mm"));
		assertEquals(2, settings("test-sheet", "--family", "card", "--across", "pressure=5", "--down", "pressure=6", "--out",
				folder.resolve("x.svg").toString()));
		assertFalse(err.contains("mistake of the program"), err);
	}
}
