package org.frisket.cli;

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
