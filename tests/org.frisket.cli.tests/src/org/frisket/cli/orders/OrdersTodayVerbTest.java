package org.frisket.cli.orders;

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
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.studio.Studio;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** A day at the desk on the command line: what is to be done, laid together, done, and taken back. */
class OrdersTodayVerbTest {

	private static final String STEPS = "0";

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	@AfterEach
	void usualStudio() {
		Studio.choose(Optional.empty());
	}

	private Answer frisket(String... arguments) {
		List<String> all = new ArrayList<>(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(all.toArray(String[]::new), new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private JsonObject json(String... arguments) {
		List<String> all = new ArrayList<>(List.of("orders"));
		all.addAll(List.of(arguments));
		all.add("--json");
		Answer answer = frisket(all.toArray(String[]::new));
		assertEquals(0, answer.status(), answer.err());
		return JsonParser.parseString(answer.out()).getAsJsonObject();
	}

	/** An approved job of squares of 60 mm. @return its number */
	private String approved(String title, int quantity) throws Exception {
		Job job = SampleJobs.outline("M0 0H60V60H0Z", OperationKind.CUT);
		job.setTitle(title);
		job.setQuantity(quantity);
		Layer layer = job.getLayers().get(0);
		layer.setStock("harbour-card");
		Path file = folder.resolve(title + ".frjob");
		JobFile.save(job, file);
		Answer answer = frisket("orders", "import", file.toString());
		assertEquals(0, answer.status(), answer.err());
		String number = answer.out().strip();
		assertEquals(0, frisket("orders", "stage", number, "approved").status());
		return number;
	}

	@Test
	void aDayAtTheDesk() throws Exception {
		String tags = approved("Gift tags", 4);
		String cards = approved("Place cards", 6);
		JsonObject before = json("today", "--day", "2031-05-12");
		assertEquals(10, before.getAsJsonArray("cut").get(0).getAsJsonObject().get("missing").getAsInt());
		assertTrue(before.getAsJsonArray("cautions").size() > 0, "hands and blades");
		Path layout = folder.resolve("layout.frjob");
		JsonObject run = json("gang", tags, cards, "--sheet", "A4", "--steps", STEPS, "--out", layout.toString());
		String number = run.get("run").getAsString();
		assertEquals(1, run.getAsJsonArray("sheets").size());
		assertTrue(run.get("estimatedSeconds").getAsDouble() > 0);
		// the file finds its guests in the order book
		Answer ran = frisket("run", layout.toString(), "--json");
		assertEquals(0, ran.status(), ran.err());
		assertFalse(ran.out().contains("parts are missing"), ran.out());
		JsonObject partly = json("done", number, "--spoiled", tags + "=1", "--time", "2min");
		assertEquals(1, partly.getAsJsonArray("moves").size());
		assertEquals("120", partly.get("measuredSeconds").getAsString());
		JsonObject left = json("today");
		assertEquals(1, left.getAsJsonArray("cut").get(0).getAsJsonObject().get("missing").getAsInt());
		assertEquals(1, left.getAsJsonArray("finish").size());
		JsonObject times = json("report", "run-time");
		assertEquals(1, times.getAsJsonArray("runs").size());
		Answer uses = frisket("orders", "report", "stock-use", "--csv");
		assertTrue(uses.out().startsWith("stock,colour,runs,planned,used,"), uses.out());
		assertTrue(uses.out().contains("harbour-card,#1d6f78,1,1,1,0,0.06237,0.036,0.5772,9,1"), uses.out());
		JsonObject back = json("done", number, "--undo");
		assertEquals("planned", back.get("state").getAsString());
		assertEquals(10, json("today").getAsJsonArray("cut").get(0).getAsJsonObject().get("missing").getAsInt());
		// a backup holds runs as well
		Path zip = folder.resolve("studio.zip");
		assertEquals(0, frisket("orders", "backup", zip.toString()).status());
		assertTrue(Files.size(zip) > 0);
		json("done", number, "--off");
		assertEquals(0, json("today").getAsJsonArray("runs").size());
		assertEquals(0, frisket("orders", "today").status());
	}

	@Test
	void mistakesAreNamedAndKeepNothing() throws Exception {
		String tags = approved("Gift tags", 4);
		String number = json("gang", tags, "--sheet", "A4", "--steps", STEPS).get("run").getAsString();
		for (String[] wrong : new String[][] { { "done", "77" }, { "done", number, "--made", tags + "=5" },
				{ "done", number, "--made", "99=1" }, { "done", number, "--time", "soon" }, { "done", number, "--undo" },
				{ "done", number, "--step", "fold" }, { "done", number, "--used", "felt=1" },
				{ "done", number, "--undo", "--partly" }, { "gang", tags, "--sheet", "A4" }, { "gang", "77", "--sheet", "A4" },
				{ "gang", tags, "--out", "x.svg" }, { "gang" }, { "done" } }) {
			List<String> all = new ArrayList<>(List.of("orders"));
			all.addAll(List.of(wrong));
			Answer answer = frisket(all.toArray(String[]::new));
			assertEquals(2, answer.status(), String.join(" ", wrong) + answer.out());
			assertFalse(answer.err().isBlank());
			assertFalse(answer.err().contains("mistake of the program"), answer.err());
		}
		assertEquals("planned", json("today").getAsJsonArray("runs").get(0).getAsJsonObject().get("state").getAsString());
	}
}
