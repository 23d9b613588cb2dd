package org.frisket.cli.line;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;

/** How verbs write JSON: for people to read too, and with what is not known as null. */
public final class Json {

	/** Makes trees of values, and texts of trees. */
	public static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

	private Json() {
	}

	public static String text(JsonElement element) {
		return GSON.toJson(element);
	}
}
