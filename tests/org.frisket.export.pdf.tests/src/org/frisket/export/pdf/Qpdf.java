package org.frisket.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.StreamSupport;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** A file as an independent reader sees its objects: Debian's qpdf, which writes them as JSON. */
final class Qpdf {

	private static final Path TOOL = Path.of("/usr/bin/qpdf");

	private final JsonObject objects;

	private Qpdf(JsonObject objects) {
		this.objects = objects;
	}

	/** Whole and free of errors and warnings, or the test fails. */
	static Qpdf read(byte[] pdf, Path folder) throws Exception {
		Path file = Files.write(folder.resolve("read.pdf"), pdf);
		output("qpdf", "--check", file.toString());
		String json = new String(output("qpdf", "--json=2", "--json-key=qpdf", "--json-stream-data=inline",
				"--decode-level=generalized", file.toString()), StandardCharsets.UTF_8);
		return new Qpdf(JsonParser.parseString(json).getAsJsonObject().getAsJsonArray("qpdf").get(1).getAsJsonObject());
	}

	/** What a tool of another project says; the test is left out where there is none, and fails if the tool does. */
	static byte[] output(String... command) throws Exception {
		Path tool = TOOL.resolveSibling(command[0]);
		assumeTrue(Files.isExecutable(tool), tool + " is not installed");
		Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		byte[] output = process.getInputStream().readAllBytes();
		assertEquals(0, process.waitFor(), String.join(" ", command) + "\n" + new String(output, StandardCharsets.UTF_8));
		return output;
	}

	private JsonElement resolved(JsonElement element) {
		JsonElement object = element != null && element.isJsonPrimitive()
				? objects.get("obj:" + element.getAsString()) : null;
		if (object == null) {
			return element;
		}
		return object.getAsJsonObject().has("value") ? object.getAsJsonObject().get("value")
				: object.getAsJsonObject().get("stream");
	}

	/** Follows keys, or places in arrays as {@code 0}, from the trailer on; null if there is nothing. */
	JsonElement at(String... way) {
		return below(objects.getAsJsonObject("trailer").get("value"), way);
	}

	JsonElement below(JsonElement from, String... way) {
		JsonElement at = resolved(from);
		for (String step : way) {
			if (at == null) {
				return null;
			}
			JsonElement next;
			if (at.isJsonArray()) {
				next = at.getAsJsonArray().get(Integer.parseInt(step));
			} else {
				JsonObject object = at.getAsJsonObject();
				next = object.has("dict") && !step.equals("data") ? object.getAsJsonObject("dict").get(step) : object.get(step);
			}
			at = resolved(next);
		}
		return at;
	}

	JsonElement page(String... way) {
		return below(at("/Root", "/Pages", "/Kids", "0"), way);
	}

	static List<Double> numbers(JsonElement array) {
		return StreamSupport.stream(array.getAsJsonArray().spliterator(), false).map(JsonElement::getAsDouble).toList();
	}

	/** Decoded as far as that loses nothing. */
	byte[] data(JsonElement stream) {
		return Base64.getDecoder().decode(below(stream, "data").getAsString());
	}

	String content() {
		return new String(data(page("/Contents")), StandardCharsets.ISO_8859_1);
	}

	/** All optional content groups. */
	List<JsonObject> groups() {
		JsonElement all = at("/Root", "/OCProperties", "/OCGs");
		List<JsonObject> groups = new ArrayList<>();
		if (all != null) {
			all.getAsJsonArray().forEach(group -> groups.add(resolved(group).getAsJsonObject()));
		}
		return groups;
	}

	/** Names of groups in the order in which a reader lists them, however deep. */
	List<String> listed() {
		List<String> names = new ArrayList<>();
		list(at("/Root", "/OCProperties", "/D", "/Order").getAsJsonArray(), names);
		return names;
	}

	private void list(JsonArray array, List<String> names) {
		for (JsonElement element : array) {
			JsonElement each = resolved(element);
			if (each.isJsonArray()) {
				list(each.getAsJsonArray(), names);
			} else if (each.isJsonObject()) {
				names.add(name(each.getAsJsonObject()));
			}
		}
	}

	static String name(JsonObject group) {
		return group.get("/Name").getAsString().replaceFirst("^u:", "");
	}
}
