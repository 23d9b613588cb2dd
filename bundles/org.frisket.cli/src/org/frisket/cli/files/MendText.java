package org.frisket.cli.files;

import java.util.Locale;

import org.frisket.geometry.repair.Mend;

import com.google.gson.JsonObject;

/** One thing that was put right, for people and for machines. */
final class MendText {

	private MendText() {
	}

	static String line(String layer, Mend mend) {
		return String.format(Locale.ROOT, "repair %s %s at %.2f,%.2f mm%s", mend.kind(), layer, mend.place().x(),
				mend.place().y(), amount(mend));
	}

	private static String amount(Mend mend) {
		return switch (mend.unit()) {
		case "mm2" -> String.format(Locale.ROOT, " (%.4f mm²)", mend.amount());
		case "" -> String.format(Locale.ROOT, " (%.0f)", mend.amount());
		default -> String.format(Locale.ROOT, " (%.4f %s)", mend.amount(), mend.unit());
		};
	}

	static JsonObject json(String layer, Mend mend) {
		JsonObject object = new JsonObject();
		object.addProperty("layer", layer);
		object.addProperty("kind", mend.kind());
		object.addProperty("x", mend.place().x());
		object.addProperty("y", mend.place().y());
		object.addProperty("amount", mend.amount());
		object.addProperty("unit", mend.unit());
		return object;
	}
}
