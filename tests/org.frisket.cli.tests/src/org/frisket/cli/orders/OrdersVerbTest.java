package org.frisket.cli.orders;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import org.frisket.model.OperationKind;
import org.frisket.model.Stage;
import org.frisket.studio.Studio;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The order book on the command line. */
class OrdersVerbTest {

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	@AfterEach
	void usualStudio() {
		Studio.choose(Optional.empty());
	}

	private Answer orders(String... arguments) {
		List<String> all = new ArrayList<>(List.of("orders"));
		all.addAll(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString(), "--by", "Ottoline"));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(all.toArray(String[]::new), new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private String number(Answer answer) {
		assertEquals(0, answer.status(), answer.err());
		String number = answer.out().strip();
		assertTrue(number.matches("\\d+"), number);
		return number;
	}

	private static JsonObject json(Answer answer) {
		assertEquals(0, answer.status(), answer.err());
		return JsonParser.parseString(answer.out()).getAsJsonObject();
	}

	@Test
	void orderIsListedUntilItIsDelivered() {
		String tags = number(orders("add", "--title", "Gift tags", "--customer", "Tern Bookshop", "--due", "2027-03-01",
				"--quantity", "40"));
		String cards = number(orders("add", "--title", "'; DROP TABLE orders_job; --"));
		JsonArray jobs = json(orders("list", "--json")).getAsJsonArray("jobs");
		assertEquals(2, jobs.size());
		assertEquals(cards, jobs.get(0).getAsJsonObject().get("number").getAsString());
		JsonObject second = jobs.get(1).getAsJsonObject();
		assertEquals(tags, second.get("number").getAsString());
		assertEquals("Tern Bookshop", second.get("customer").getAsString());
		assertEquals("2027-03-01", second.get("due").getAsString());
		assertEquals(40, second.get("quantity").getAsInt());
		assertEquals("enquiry", second.get("stage").getAsString());
		assertEquals(0, orders("stage", tags, "delivered", "--remark", "by hand").status());
		assertEquals(1, json(orders("list", "--open", "--json")).getAsJsonArray("jobs").size());
		assertEquals(1, json(orders("list", "--find", "TERN tags", "--json")).getAsJsonArray("jobs").size());
		assertEquals(0, json(orders("list", "--due-before", "2027-03-01", "--json")).getAsJsonArray("jobs").size());
	}

	@Test
	void stagesTellWhoAndWhyAndCanBeTakenBack() {
		String number = number(orders("add", "--title", "Banner"));
		assertEquals(0, orders("rules", "proof-before-approval", "on").status());
		Answer early = orders("stage", number, "approved");
		assertEquals(2, early.status());
		assertTrue(early.err().contains("--anyway"), early.err());
		assertEquals(0, orders("stage", number, "approved", "--remark", "by telephone", "--anyway").status());
		assertEquals(0, orders("stage", number, "on-hold").status());
		assertEquals(0, orders("stage", number, "--undo").status());
		JsonObject job = json(orders("show", number, "--json"));
		assertEquals("approved", job.get("stage").getAsString());
		JsonObject first = job.getAsJsonArray("history").get(0).getAsJsonObject();
		assertEquals("Ottoline", first.get("who").getAsString());
		assertEquals("by telephone", first.get("remark").getAsString());
		assertEquals(3, job.getAsJsonArray("history").size());
	}

	@Test
	void jobsComeAndGoAsFiles() throws Exception {
		Path file = folder.resolve("tag.frjob");
		Job job = SampleJobs.giftTag();
		JobFile.save(job, file);
		String number = number(orders("import", file.toString()));
		assertEquals(0, orders("stage", number, "ordered").status());
		Path back = folder.resolve("back.frjob");
		assertEquals(0, orders("export", number, "--out", back.toString()).status());
		Job same = JobFile.load(back);
		assertEquals(Stage.ORDERED, same.getStage());
		assertEquals(number, same.getNumber());
		same.setStage(job.getStage());
		same.setNumber(job.getNumber());
		same.setId(job.getId());
		same.getHistory().clear();
		assertArrayEquals(Files.readAllBytes(file), JobFile.toBytes(same));
		Answer twice = orders("import", file.toString());
		assertEquals(2, twice.status());
		assertTrue(twice.err().contains("already"), twice.err());
	}

	@Test
	void mistakesAreNamedAndKeepNothing() {
		for (String[] wrong : new String[][] { { "add", "--title", " " }, { "add", "--title", "x", "--quantity", "0" },
				{ "add", "--title", "x", "--due", "soon" }, { "show", "7" }, { "stage", "7", "approved" },
				{ "stage", "7", "gone" }, { "stage", "7" }, { "export", "7", "--out", "x.txt" }, { "rules", "no-such", "off" }, { "rules", "no-such" },
				{ "report", "weather" }, { "customer" }, { "customer", "show", "Nobody" }, { "customer", "set", "Nobody" },
				{ "import", "nowhere.csv" }, { "import", "a.frjob", "--map", "title=x" }, { "list", "--stage", "gone" },
				{ "import", "nowhere.frjob" }, { "list", "--db", "jdbc:strange:x" }, {} }) {
			Answer answer = orders(wrong);
			assertEquals(2, answer.status(), String.join(" ", wrong) + answer.out());
			assertFalse(answer.err().isBlank());
			assertFalse(answer.err().contains("mistake of the program"), answer.err());
		}
		assertEquals(0, json(orders("list", "--json")).getAsJsonArray("jobs").size());
	}

	@Test
	void backupIsTheStudioElsewhere() {
		String number = number(orders("add", "--title", "Banner"));
		Path file = folder.resolve("studio.zip");
		assertEquals(0, orders("backup", file.toString()).status());
		assertEquals(2, orders("restore", file.toString()).status());
		Path before = Path.of(json(orders("restore", file.toString(), "--replace", "--json")).get("before").getAsString());
		assertTrue(Files.exists(before) && before.getFileName().toString().contains("before-restore"), before.toString());
		assertEquals("Banner", json(orders("show", number, "--json")).get("title").getAsString());
	}

	@Test
	void studioSaysWhereItsDatabaseIs() {
		assertTrue(orders("database").out().contains("studio.mv.db"));
		assertEquals("jdbc:postgresql://desk/studio", orders("database", "--db", "jdbc:postgresql://desk/studio").out().strip());
		assertEquals("jdbc:postgresql://desk/studio", orders("database").out().strip());
		assertEquals(2, orders("database", "--db", "jdbc:postgresql://desk/studio?password=tern").status());
		assertTrue(orders("database", "--own").out().contains("studio.mv.db"));
	}

	private Path composed(String text) {
		Path file = folder.resolve(text.replace(' ', '-') + ".frjob");
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		assertEquals(0, Frisket.run(
				new String[] { "compose", "--text", text, "--font", "Liberation Serif Bold", "--height", "40mm", "--out",
						file.toString() },
				new PrintStream(new ByteArrayOutputStream()), new PrintStream(err)), err.toString());
		return file;
	}

	@Test
	void composedJobsComeOneAfterAnother() {
		Path ferry = composed("Ferry");
		String first = number(orders("import", ferry.toString()));
		String second = number(orders("import", composed("Tern").toString()));
		assertEquals(Integer.parseInt(first) + 1, Integer.parseInt(second));
		assertEquals("Ferry", json(orders("show", first, "--json")).get("title").getAsString());
		assertEquals(2, orders("import", ferry.toString()).status());
		assertEquals("3", number(orders("import", ferry.toString(), "--again")));
	}

	@Test
	void rulesAreKeptUntilTheyAreTurnedOff() {
		String number = number(orders("add", "--title", "Banner"));
		assertEquals(0, orders("rules", "proof-before-approval", "on").status());
		assertEquals(2, orders("stage", number, "approved").status());
		assertEquals(0, orders("proof", number, "--remark", "by mail").status());
		assertEquals(0, orders("stage", number, "approved").status());
		assertEquals(2, orders("stage", number, "designed").status());
		assertEquals(0, orders("rules", "remark-when-going-back", "off").status());
		assertEquals(0, orders("stage", number, "designed").status());
		JsonArray rules = json(orders("rules", "--json")).getAsJsonArray("rules");
		assertEquals(List.of("true", "true", "false"),
				List.of(0, 1, 2).stream().map(i -> rules.get(i).getAsJsonObject().get("on").getAsString()).toList());
	}

	@Test
	void blockedJobIsNotCut() throws Exception {
		Path file = folder.resolve("thin.frjob");
		Job job = Jobs.create("job", "Broken");
		Jobs.addOperation(Jobs.addOutline(Jobs.addLayer(job, "Card"), "M0 0 nowhere"), OperationKind.CUT);
		JobFile.save(job, file);
		String number = number(orders("import", file.toString()));
		Answer answer = orders("stage", number, "cut");
		assertEquals(2, answer.status(), answer.out());
		assertTrue(answer.err().contains("no-blocking-findings off"), answer.err());
		assertEquals(0, orders("stage", number, "cut", "--anyway").status());
	}

	@Test
	void customersAreKeptJoinedHandedOutAndErased() throws Exception {
		assertEquals(0, orders("customer", "set", "Kelp & Anchor", "--new", "--mail", "office@kelp.example").status());
		String number = number(orders("add", "--title", "Sign", "--customer", "Kelp and Ancor"));
		assertEquals(1, json(orders("customer", "list", "--alike", "--json")).getAsJsonArray("pairs").size());
		assertEquals(0, orders("customer", "merge", "Kelp and Ancor", "Kelp & Anchor").status());
		assertEquals("Kelp & Anchor", json(orders("show", number, "--json")).get("customer").getAsString());
		assertEquals(0, orders("customer", "set", "Kelp & Anchor", "--name", "Kelp Works", "--notes", "a\\nb").status());
		assertEquals("a\nb", json(orders("customer", "show", "Kelp Works", "--json")).get("notes").getAsString());
		Path file = folder.resolve("kept.json");
		assertEquals(0, orders("customer", "export", "Kelp Works", "--out", file.toString()).status());
		assertTrue(Files.readString(file).contains("office@kelp.example"));
		assertEquals(2, orders("customer", "erase", "Kelp Works").status());
		assertEquals(0, orders("customer", "erase", "Kelp Works", "--yes").status());
		assertTrue(json(orders("show", number, "--json")).get("customer").getAsString().startsWith("erased customer "));
	}

	@Test
	void tableOfOrdersIsTakenInWholeOrNotAtAll() throws Exception {
		Path file = folder.resolve("orders.csv");
		Files.writeString(file, "Name,Client,Date,Qty,Ref\nTags,Tern Bookshop,3/1/2027,40,A-1\nCards,,13/13/2027,x,A-2\n");
		Answer bad = orders("import", file.toString(), "--dates", "mdy");
		assertEquals(2, bad.status());
		assertTrue(bad.err().contains("row 3, column “Date”") && bad.err().contains("row 3, column “Qty”"), bad.err());
		assertEquals(0, json(orders("list", "--json")).getAsJsonArray("jobs").size());
		Files.writeString(file, "Name,Client,Date,Qty,Ref\nTags,Tern Bookshop,3/1/2027,40,A-1\nCards,,,,A-2\n");
		Answer badName = orders("import", file.toString(), "--dates", "mdy", "--remember", "the shop");
		assertEquals(2, badName.status());
		assertTrue(badName.err().contains("the shop"), badName.err());
		assertEquals(0, json(orders("list", "--json")).getAsJsonArray("jobs").size());
		assertEquals("1\n2", orders("import", file.toString(), "--map", "title=Name,due=Date", "--dates", "mdy",
				"--remember", "shop").out().strip());
		Files.writeString(file, "Name,Client,Date,Qty,Ref\nTags,Tern Bookshop,3/1/2027,40,A-1\nMenu,,3/2/2027,1,A-3\n");
		assertEquals(2, orders("import", file.toString(), "--mapping", "shop").status());
		assertEquals("3", number(orders("import", file.toString(), "--mapping", "shop", "--skip-known")));
		assertEquals("2027-03-02", json(orders("show", "3", "--json")).get("due").getAsString());
		assertEquals(2, orders("import", file.toString(), "--mapping", "other").status());
		Files.writeString(file, "What,When\nSign,2027-03-04\n");
		Answer other = orders("import", file.toString(), "--map", "title=What,due=When", "--remember", "shop");
		assertEquals("4", number(other));
		assertTrue(other.err().contains("was remembered as title=Name"), other.err());
	}

	@Test
	void ticketAndReportsAreWritten() throws Exception {
		String number = number(orders("import", composed("Gull").toString()));
		Path ticket = folder.resolve("gull.xjdf");
		assertEquals(0, orders("export", number, "--out", ticket.toString()).status());
		String xml = Files.readString(ticket);
		assertTrue(xml.contains("<XJDF") && xml.contains("JobID=\"" + number + "\"") && xml.contains("CutPath="), xml);
		assertEquals(0, orders("stage", number, "delivered", "--anyway").status());
		assertTrue(orders("report", "stages", "--csv").out().contains("delivered,1,1,0,0,0,0,0,0"));
		assertEquals(1, json(orders("report", "on-time", "--json")).getAsJsonArray("months").size());
	}
}
