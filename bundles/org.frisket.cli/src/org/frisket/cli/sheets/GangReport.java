package org.frisket.cli.sheets;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.frisket.cli.line.Json;
import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.imposing.NoRoom;
import org.frisket.sheets.imposing.SheetPlan;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/**
 * What laying jobs came to.
 *
 * @param jobs    by what placements call them, the host first
 * @param offcuts of each sheet
 * @param kept    ids of the leftovers that offcuts were kept as, by the number of the sheet
 */
record GangReport(Map<String, Job> jobs, SheetPlan plan, List<LaidSheet> sheets, List<Optional<Bounds>> offcuts,
		Map<Integer, String> kept, double seconds, long seed, List<Path> written) {

	private static final double PERCENT = 100;

	void print(PrintWriter out) {
		out.printf(Locale.ROOT, "%s on %s, %.2f %% of them used, in %.1f s%n", count(plan.parts(), "part"),
				count(sheets.size(), "sheet"), PERCENT * plan.utilisation(), seconds);
		for (int i = 0; i < sheets.size(); i++) {
			Sheet sheet = sheets.get(i).sheet();
			out.printf(Locale.ROOT, "sheet %d: %s%s%s, %.2f × %.2f mm, %s, %.2f %% used%s%n", i + 1,
					sheet.getStock() == null ? "no stock" : sheet.getStock(),
					sheet.getColour() == null ? "" : " " + sheet.getColour(),
					sheet.getLeftover() == null ? "" : ", " + sheet.getLeftover(), sheet.getWidth(), sheet.getHeight(),
					count(sheets.get(i).parts().size(), "part"), PERCENT * sheets.get(i).utilisation(), offcut(i));
		}
		written.forEach(file -> out.println("wrote " + file));
		plan.left().forEach(left -> out.println(left.message()));
	}

	private String offcut(int sheet) {
		return offcuts.get(sheet).map(box -> String.format(Locale.ROOT, ", offcut %.1f × %.1f mm%s", box.width(),
				box.height(), kept.containsKey(sheet) ? " kept as " + kept.get(sheet) : "")).orElse("");
	}

	private static String count(int count, String what) {
		return count + " " + what + (count == 1 ? "" : "s");
	}

	String json() {
		JsonObject json = new JsonObject();
		JsonArray allJobs = new JsonArray();
		jobs.forEach((id, job) -> {
			JsonObject one = new JsonObject();
			one.addProperty("id", id);
			one.addProperty("title", job.getTitle());
			one.addProperty("quantity", job.getQuantity());
			allJobs.add(one);
		});
		json.add("jobs", allJobs);
		json.addProperty("parts", plan.parts());
		json.addProperty("utilisation", plan.utilisation());
		JsonArray all = new JsonArray();
		for (int i = 0; i < sheets.size(); i++) {
			all.add(sheet(i));
		}
		json.add("sheets", all);
		JsonArray left = new JsonArray();
		plan.left().forEach(each -> left.add(left(each)));
		json.add("left", left);
		json.addProperty("seconds", seconds);
		json.addProperty("seed", seed);
		json.add("output", Json.GSON.toJsonTree(written.stream().map(Path::toString).toList()));
		return Json.text(json);
	}

	private JsonObject sheet(int number) {
		LaidSheet laid = sheets.get(number);
		Sheet sheet = laid.sheet();
		JsonObject json = new JsonObject();
		json.addProperty("id", sheet.getId());
		json.addProperty("stock", sheet.getStock());
		json.addProperty("colour", sheet.getColour());
		json.addProperty("width", sheet.getWidth());
		json.addProperty("height", sheet.getHeight());
		json.addProperty("roll", sheet.isRoll());
		json.addProperty("leftover", sheet.getLeftover());
		json.addProperty("parts", laid.parts().size());
		json.addProperty("utilisation", laid.utilisation());
		JsonObject offcut = offcuts.get(number).map(box -> {
			JsonObject one = new JsonObject();
			one.addProperty("x", box.minX());
			one.addProperty("y", box.minY());
			one.addProperty("width", box.width());
			one.addProperty("height", box.height());
			one.addProperty("kept", kept.get(number));
			return one;
		}).orElse(null);
		json.add("offcut", offcut);
		return json;
	}

	private JsonObject left(NoRoom left) {
		JsonObject json = new JsonObject();
		json.addProperty("job", left.job() == null ? jobs.keySet().iterator().next() : left.job());
		json.addProperty("part", left.part().title());
		json.addProperty("quantity", left.quantity());
		json.addProperty("width", left.part().room().bounds().width());
		json.addProperty("height", left.part().room().bounds().height());
		json.addProperty("sheetWidth", Double.isInfinite(left.sheetWidth()) ? null : left.sheetWidth());
		json.addProperty("sheetHeight", left.sheetHeight());
		json.addProperty("tooLarge", left.tooLarge());
		return json;
	}
}
