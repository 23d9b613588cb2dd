package org.frisket.cli.sheets;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.frisket.cli.line.Json;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What a layout came to. */
record LayoutReport(Layout layout, double seconds, long seed, List<Path> written) {

	private static final double PERCENT = 100;

	private boolean onRoll() {
		return !layout.sheets().isEmpty() && layout.sheets().get(0).isRoll();
	}

	void print(PrintWriter out) {
		out.printf(Locale.ROOT, "%s on %s, %.2f %% of it used, in %.1f s%n", count(layout.placements().size(), "part"),
				onRoll() ? String.format(Locale.ROOT, "%.2f mm of the roll", layout.usedLength())
						: String.format(Locale.ROOT, "%s, %.2f mm of the last", count(layout.sheets().size(), "sheet"),
								layout.usedLength()),
				PERCENT * layout.utilisation(), seconds);
		written.forEach(file -> out.println("wrote " + file));
		for (Part part : layout.left()) {
			out.printf("no place for %d of “%s”, %s%n", part.quantity(), part.id(), size(part));
		}
	}

	private static String count(int count, String what) {
		return count + " " + what + (count == 1 ? "" : "s");
	}

	private static String size(Part part) {
		return String.format(Locale.ROOT, "%.2f × %.2f mm", part.region().bounds().width(),
				part.region().bounds().height());
	}

	String json() {
		JsonObject json = new JsonObject();
		json.addProperty("parts", layout.placements().size());
		if (onRoll()) {
			json.addProperty("width", layout.sheets().get(0).width());
		} else {
			json.addProperty("sheets", layout.sheets().size());
		}
		json.addProperty("length", layout.usedLength());
		json.addProperty("utilisation", layout.utilisation());
		json.addProperty("seconds", seconds);
		json.addProperty("seed", seed);
		JsonArray left = new JsonArray();
		for (Part part : layout.left()) {
			JsonObject one = new JsonObject();
			one.addProperty("id", part.id());
			one.addProperty("quantity", part.quantity());
			one.addProperty("width", part.region().bounds().width());
			one.addProperty("height", part.region().bounds().height());
			left.add(one);
		}
		json.add("left", left);
		json.add("output", Json.GSON.toJsonTree(written.stream().map(Path::toString).toList()));
		return Json.text(json);
	}
}
