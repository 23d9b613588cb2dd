package org.frisket.typography;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON (RFC 8259) as other programs write it: lists, maps, texts without escapes, and numbers. */
final class Json {

	private final String text;
	private int at;

	private Json(String text) {
		this.text = text;
	}

	static Object read(String text) {
		Json json = new Json(text.strip());
		Object value = json.value();
		json.expect(json.at == json.text.length());
		return value;
	}

	private Object value() {
		return switch (text.charAt(at)) {
		case '[' -> list();
		case '{' -> map();
		case '"' -> string();
		default -> number();
		};
	}

	private List<Object> list() {
		List<Object> list = new ArrayList<>();
		at++;
		while (text.charAt(at) != ']') {
			list.add(value());
			skipComma(']');
		}
		at++;
		return list;
	}

	private Map<String, Object> map() {
		Map<String, Object> map = new LinkedHashMap<>();
		at++;
		while (text.charAt(at) != '}') {
			String key = string();
			expect(text.charAt(at++) == ':');
			map.put(key, value());
			skipComma('}');
		}
		at++;
		return map;
	}

	private void skipComma(char end) {
		if (text.charAt(at) == ',') {
			at++;
		} else {
			expect(text.charAt(at) == end);
		}
	}

	private String string() {
		expect(text.charAt(at) == '"');
		int end = text.indexOf('"', at + 1);
		String string = text.substring(at + 1, end);
		expect(string.indexOf('\\') < 0);
		at = end + 1;
		return string;
	}

	private Long number() {
		int start = at;
		while (at < text.length() && "-0123456789".indexOf(text.charAt(at)) >= 0) {
			at++;
		}
		return Long.valueOf(text.substring(start, at));
	}

	private void expect(boolean holds) {
		if (!holds) {
			throw new IllegalArgumentException("no JSON at " + at + ": " + text);
		}
	}
}
