package org.frisket.cli.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.cli.Frisket;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Placement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Jobs of Harbour Lane laid together from the command line. */
class JobLayingTest {

	@TempDir
	private Path folder;

	private Path tags;
	private Path cards;

	private record Answer(int status, String out, String err) {

		JsonObject json() {
			return JsonParser.parseString(out).getAsJsonObject();
		}
	}

	@BeforeEach
	void jobs() throws IOException {
		tags = job("tags.frjob", "Gift tags", 6, "M0 0h60l10 15l-10 15h-60z");
		cards = job("cards.frjob", "Place cards", 4, "M0 0h90v55h-90z");
	}

	private Path job(String file, String title, int quantity, String path) throws IOException {
		Job job = Jobs.create("job", title);
		job.setQuantity(quantity);
		Jobs.addOperation(Jobs.addOutline(Jobs.addLayer(job, "Card"), path), OperationKind.CUT);
		JobFile.save(job, folder.resolve(file));
		return folder.resolve(file);
	}

	private Answer impose(Object... more) {
		List<String> arguments = new ArrayList<>(List.of("impose", "--studio", folder.resolve("studio").toString(), "--steps",
				"20000"));
		for (Object each : more) {
			arguments.add(each.toString());
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments.toArray(String[]::new), new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	@Test
	void jobsOfOneIdShareASheetAndTheFirstIsTheHost() throws IOException {
		Path gang = folder.resolve("gangs/gang.frjob");
		Files.createDirectories(gang.getParent());
		Answer answer = impose(tags, cards, "--sheet", "12x12in", "--turn", "90", "--out", gang, "--json");
		assertEquals(0, answer.status(), answer.err());
		assertEquals(1, answer.json().getAsJsonArray("sheets").size());
		JsonObject sheet = answer.json().getAsJsonArray("sheets").get(0).getAsJsonObject();
		assertEquals(10, sheet.get("parts").getAsInt());
		assertEquals(304.8, sheet.get("width").getAsDouble(), 1e-9);
		assertEquals((6 * (60 * 30 + 150) + 4 * 90 * 55) / (304.8 * 304.8), sheet.get("utilisation").getAsDouble(), 1e-6);
		assertTrue(sheet.getAsJsonObject("offcut").get("width").getAsDouble() > 20);
		Job host = JobFile.load(gang);
		assertEquals("Gift tags", host.getTitle());
		Guest guest = host.getGuests().get(0);
		assertEquals("../cards.frjob Place cards job-2", guest.getFile() + " " + guest.getTitle() + " " + guest.getJob());
		List<Placement> placed = host.getSheets().get(0).getPlacements();
		assertEquals(6, placed.stream().filter(each -> each.getJob() == null).count());
		assertEquals(4, placed.stream().filter(each -> "job-2".equals(each.getJob())).count());
		assertEquals(304.8, host.getLaying().getWidth(), 1e-9);
		// laid again it is the same, guests and all
		byte[] first = Files.readAllBytes(gang);
		assertEquals(0, impose(gang, "--out", gang).status());
		assertArrayEquals(first, Files.readAllBytes(gang));
	}

	@Test
	void everySheetIsAFileOfItsOwn() throws IOException {
		Path layout = folder.resolve("layout.svg");
		Answer one = impose(tags, cards, "--sheet", "12x12in", "--out", layout);
		assertEquals(0, one.status(), one.err());
		assertTrue(Files.exists(layout));
		assertEquals(0, impose(tags, cards, "--sheet", "12x12in", "--by-job", "--out", layout).status());
		for (String each : List.of("layout-1.svg", "layout-2.svg")) {
			assertTrue(Files.readString(folder.resolve(each)).contains("304.8"), each);
		}
		assertFalse(Files.exists(folder.resolve("layout-3.svg")));
	}

	@Test
	void offcutsAreKeptAndUsedNextTime() {
		Answer first = impose(cards, "--sheet", "210x297mm", "--stock", "card", "--keep-offcuts", "--json");
		assertEquals(0, first.status(), first.err());
		JsonObject sheet = first.json().getAsJsonArray("sheets").get(0).getAsJsonObject();
		assertEquals("card", sheet.get("stock").getAsString());
		assertEquals("leftover-1", sheet.getAsJsonObject("offcut").get("kept").getAsString());
		Answer second = impose(tags, "--stock", "card", "--keep-offcuts", "--json");
		assertEquals("leftover-1", second.json().getAsJsonArray("sheets").get(0).getAsJsonObject().get("leftover").getAsString());
		Answer third = impose(tags, "--stock", "card", "--json");
		assertFalse(third.json().getAsJsonArray("sheets").get(0).toString().contains("leftover-1"), third.out());
	}

	@Test
	void whatFindsNoPlaceIsNamed() {
		Answer answer = impose(cards, "--sheet", "80x80mm", "--json");
		assertEquals(1, answer.status());
		JsonObject left = answer.json().getAsJsonArray("left").get(0).getAsJsonObject();
		assertEquals(4, left.get("quantity").getAsInt());
		assertEquals(80, left.get("sheetWidth").getAsDouble());
		assertTrue(left.get("tooLarge").getAsBoolean());
		assertTrue(impose(cards, "--sheet", "80x80mm").out().contains("too large"));
	}

	@Test
	void aGuestThatIsGoneIsNamedAndTheRestGoesOn() throws IOException {
		Path gang = folder.resolve("gang.frjob");
		assertEquals(0, impose(tags, cards, "--out", gang).status());
		Files.delete(cards);
		Answer answer = impose(gang, "--json");
		assertEquals(0, answer.status(), answer.err());
		assertTrue(answer.err().contains(cards.toString()), answer.err());
		assertEquals(6, answer.json().get("parts").getAsInt());
	}

	@Test
	void wrongUseWritesNothing() {
		Path out = folder.resolve("never.svg");
		for (Object[] wrong : new Object[][] { { tags, "--sheet", "100x100mm", "--margin", "50mm" }, { tags, "--gap", "-1mm" },
				{ tags, "--stock", "moonlight" }, { tags, folder.resolve("none.frjob") }, { tags, "--roll", "5mm" },
				{ tags, folder.resolve("parts.svg") }, { folder.resolve("parts.svg"), "--sheet", "12x12in", "--apart" },
				{ tags, "--out", folder.resolve("a.frjob"), "--out", folder.resolve("b.frjob") } }) {
			List<Object> arguments = new ArrayList<>(List.of(wrong));
			arguments.addAll(List.of("--out", out));
			Answer answer = impose(arguments.toArray());
			assertEquals(2, answer.status(), () -> List.of(wrong) + answer.out());
			assertFalse(answer.err().isBlank());
			assertFalse(Files.exists(out));
		}
	}
}
