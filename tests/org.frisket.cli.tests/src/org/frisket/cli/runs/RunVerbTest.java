package org.frisket.cli.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.cli.Frisket;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.sheets.GuestFiles;
import org.frisket.studio.Studio;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class RunVerbTest {

	@TempDir
	private Path folder;
	private String out;
	private String err;

	@AfterEach
	void forgetTheStudio() {
		Studio.choose(Optional.empty());
	}

	private int frisket(String... arguments) {
		List<String> all = new ArrayList<>(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		ByteArrayOutputStream answers = new ByteArrayOutputStream();
		ByteArrayOutputStream complaints = new ByteArrayOutputStream();
		int status = Frisket.run(all.toArray(String[]::new), new PrintStream(answers, true, StandardCharsets.UTF_8),
				new PrintStream(complaints, true, StandardCharsets.UTF_8));
		out = answers.toString(StandardCharsets.UTF_8);
		err = complaints.toString(StandardCharsets.UTF_8);
		return status;
	}

	private JsonObject json(int status, String... arguments) {
		List<String> all = new ArrayList<>(List.of("run"));
		all.addAll(List.of(arguments));
		all.add("--json");
		assertEquals(status, frisket(all.toArray(String[]::new)), () -> err + out);
		return JsonParser.parseString(out).getAsJsonObject();
	}

	/** A job with a square of 20 mm that is cut. */
	private static Job square(String title) {
		Job job = Jobs.create("job", title);
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setStock("harbour-white");
		Outline outline = Jobs.addOutline(layer, "M0 0h20v20h-20z");
		outline.setName("Square");
		Jobs.addOperation(outline, OperationKind.CUT);
		return job;
	}

	private String saved(Job job, String name) throws Exception {
		Path file = folder.resolve(name);
		JobFile.save(job, file);
		return file.toString();
	}

	private void studio() {
		assertEquals(0, frisket("settings", "machine", "add", "harbour", "--set", "name=Harbour cutter", "--set", "width=330mm",
				"--set", "height=330mm", "--set", "speed-most=100", "--set", "speed-most-means=100", "--set", "arcs=yes"), () -> err);
		assertEquals(0, frisket("settings", "tool", "add", "b1", "--kind", "blade", "--set", "name=Harbour blade", "--set", "offset=0.3mm"),
				() -> err);
		assertEquals(0, frisket("stock", "add", "--name", "Harbour white", "--id", "harbour-white", "--family", "card", "--weight",
				"216gsm", "--caliper", "0.3mm", "--price", "0.45 EUR"), () -> err);
	}

	private static List<String> ids(JsonElement findings) {
		List<String> ids = new ArrayList<>();
		findings.getAsJsonArray().forEach(finding -> ids.add(finding.getAsJsonObject().get("id").getAsString()));
		return ids;
	}

	@Test
	void aJobWithoutSheetsIsRunAsItLiesOnTheBench() throws Exception {
		String file = saved(SampleJobs.giftTag(), "tag.frjob");
		assertEquals(0, frisket("run", file), () -> err + out);
		assertTrue(out.startsWith("the bench as it lies: "), out);
		assertTrue(out.contains("no particular machine"), out);
		assertTrue(out.contains("1. cut with "), out);
		assertTrue(out.contains("rules of thumb"), out);
		assertTrue(out.contains("follow the manual"), out);
		assertTrue(out.contains("material not known, time no rate"), out);
		JsonObject run = json(0, file).getAsJsonArray("sheets").get(0).getAsJsonObject();
		assertTrue(run.get("sheet").isJsonNull());
		JsonObject seconds = run.getAsJsonObject("seconds");
		double sum = 0;
		for (String each : List.of("strokes", "travel", "lifts", "stops")) {
			sum += seconds.get(each).getAsDouble();
		}
		assertEquals(seconds.get("all").getAsDouble(), sum, 1e-9);
		String first = out;
		json(0, file);
		assertEquals(first, out, "the same job gives the same run");
	}

	@Test
	void chosenOptionsAreFollowed() throws Exception {
		studio();
		String file = saved(square("Tag"), "tag.frjob");
		JsonObject usual = leg(json(0, file));
		// round the square, as far before its start and past it as the blade trails
		assertEquals(0.08 + 0.0003 + 0.0003, usual.get("metres").getAsDouble(), 1e-6);
		assertEquals("b1", usual.get("tool").getAsString());
		JsonObject chosen = leg(json(0, file, "--set", "lead-in=0mm", "--set", "overcut=3mm"));
		assertEquals(0.083, chosen.get("metres").getAsDouble(), 1e-6);
		assertEquals(0, frisket("run", "--list"));
		assertTrue(out.contains("overcut=0.3mm: "), out);
		assertEquals(2, frisket("run", file, "--set", "overcut=far"));
		assertTrue(err.contains("overcut"), err);
		assertEquals(2, frisket("run", file, "--set", "depth=3mm"));
		assertTrue(err.contains("depth"), err);
	}

	private static JsonObject leg(JsonObject root) {
		return root.getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonArray("legs").get(0).getAsJsonObject();
	}

	@Test
	void sheetsAreCountedAndSharedAndGuestsReadFromTheirFiles() throws Exception {
		studio();
		Job guest = square("Cards");
		guest.setNumber("2031-8");
		Path guestFile = Path.of(saved(guest, "cards.frjob"));
		Job host = square("Tags");
		host.setNumber("2031-7");
		String element = host.getLayers().get(0).getElements().get(0).getId();
		Path hostFile = folder.resolve("tags.frjob");
		Guest named = GuestFiles.guest(host, List.of(), hostFile, guest, guestFile);
		host.getGuests().add(named);
		Sheet first = Jobs.addSheet(host, "harbour-white", 200, 200);
		Jobs.addPlacement(first, element, 40, 40, 0);
		Jobs.addPlacement(first, element, 80, 40, 0).setJob(named.getJob());
		Jobs.addPlacement(first, element, 120, 40, 0).setJob(named.getJob());
		Jobs.addPlacement(Jobs.addSheet(host, "harbour-white", 200, 200), element, 40, 40, 0);
		String file = saved(host, "tags.frjob");

		JsonArray sheets = json(0, file, "--rate", "30.00 EUR").getAsJsonArray("sheets");
		assertEquals(2, sheets.size());
		JsonObject cost = sheets.get(0).getAsJsonObject().getAsJsonObject("cost");
		assertEquals("0.45", cost.getAsJsonObject("material").get("amount").getAsString());
		JsonArray shares = cost.getAsJsonArray("shares");
		assertEquals(2, shares.size());
		for (String of : List.of("material", "time", "total")) {
			BigDecimal sum = BigDecimal.ZERO;
			for (JsonElement share : shares) {
				sum = sum.add(share.getAsJsonObject().getAsJsonObject(of).get("amount").getAsBigDecimal());
			}
			assertEquals(cost.getAsJsonObject(of).get("amount").getAsBigDecimal(), sum, of);
		}
		for (JsonElement each : shares) {
			JsonObject share = each.getAsJsonObject();
			boolean hosts = share.get("name").getAsString().equals("2031-7");
			assertEquals(hosts ? "0.15" : "0.30", share.getAsJsonObject("material").get("amount").getAsString());
		}
		assertEquals(1, json(0, file, "--sheet", "2").getAsJsonArray("sheets").size());
		assertEquals(0, frisket("run", file, "--rate", "30 eur"), () -> err);
		assertTrue(out.contains("share of 2031-8: "), out);
		assertTrue(out.contains("at 30.00 EUR an hour"), out);

		assertEquals(0, frisket("run", file, "--rate", "60 EUR", "--keep-rate"), () -> err);
		assertEquals("EUR", json(0, file, "--sheet", "2").getAsJsonArray("sheets").get(0).getAsJsonObject()
				.getAsJsonObject("cost").getAsJsonObject("time").get("currency").getAsString());

		Files.delete(guestFile);
		JsonObject without = json(0, file);
		assertEquals(List.of("part-missing", "part-missing"),
				ids(without.getAsJsonArray("sheets").get(0).getAsJsonObject().get("findings")));
		assertEquals(1, without.getAsJsonArray("problems").size());
		assertTrue(without.getAsJsonArray("problems").get(0).getAsString().contains("cards.frjob"), out);
	}

	@Test
	void whatCannotBeRunBlocks() throws Exception {
		studio();
		Job job = square("Tags");
		Sheet sheet = Jobs.addSheet(job, "harbour-white", 330, 330);
		Jobs.addPlacement(sheet, job.getLayers().get(0).getElements().get(0).getId(), 315, 165, 0);
		String file = saved(job, "tags.frjob");
		JsonObject run = json(1, file).getAsJsonArray("sheets").get(0).getAsJsonObject();
		assertTrue(ids(run.get("findings")).contains("run-outside-area"), out);
		assertEquals(0, frisket("run", file, "--machine", "plain"), () -> err + out);
		assertTrue(out.contains("caution run-outside-area"), "nobody has said where that one ends: " + out);
	}

	@Test
	void wrongUseIsRefused() throws Exception {
		String file = saved(square("Tag"), "tag.frjob");
		assertRefused("say which job", "run");
		assertRefused("no sheets", "run", file, "--sheet", "1");
		assertRefused("harbour", "run", file, "--machine", "harbour");
		assertRefused("--rate", "run", file, "--rate", "much");
		assertRefused("--keep-rate", "run", file, "--keep-rate");
		assertRefused(".pdf", "run", file, "--out", folder.resolve("run.txt").toString());
		assertRefused("none.frjob", "run", folder.resolve("none.frjob").toString());
		Job job = square("Tags");
		Jobs.addSheet(job, "harbour-white", 100, 100);
		assertRefused("the job has 1", "run", saved(job, "tags.frjob"), "--sheet", "2");
	}

	private void assertRefused(String reason, String... arguments) {
		assertEquals(2, frisket(arguments), () -> out);
		assertTrue(err.contains(reason), err);
		assertTrue(out.isEmpty(), out);
	}
}
