package org.frisket.imports.svg;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/** Colours: those of hexadecimal digits, {@code rgb()}, and the names of CSS 2.1. Gradients and patterns have none. */
final class Paint {

	private static final Map<String, Integer> NAMES = Map.ofEntries(Map.entry("black", 0x000000),
			Map.entry("silver", 0xc0c0c0), Map.entry("gray", 0x808080), Map.entry("grey", 0x808080),
			Map.entry("white", 0xffffff), Map.entry("maroon", 0x800000), Map.entry("red", 0xff0000),
			Map.entry("purple", 0x800080), Map.entry("fuchsia", 0xff00ff), Map.entry("magenta", 0xff00ff),
			Map.entry("green", 0x008000), Map.entry("lime", 0x00ff00), Map.entry("olive", 0x808000),
			Map.entry("yellow", 0xffff00), Map.entry("navy", 0x000080), Map.entry("blue", 0x0000ff),
			Map.entry("teal", 0x008080), Map.entry("aqua", 0x00ffff), Map.entry("cyan", 0x00ffff),
			Map.entry("orange", 0xffa500));

	private Paint() {
	}

	/** As {@code #rrggbb}, or empty. */
	static String colour(String paint, Style style) {
		OptionalInt rgb = rgb(paint, style);
		return rgb.isPresent() ? "#" + Integer.toHexString(1 << 24 | rgb.getAsInt()).substring(1) : "";
	}

	/** From 0 for black to 1 for white, as masks take it; paints without a colour count as white. */
	static double luminance(String paint, Style style) {
		OptionalInt found = rgb(paint, style);
		if (found.isEmpty()) {
			return 1;
		}
		int rgb = found.getAsInt();
		// SVG 1.1, section 14.4: the coefficients of linear sRGB; close enough to tell light from dark
		return (0.2125 * (rgb >> 16) + 0.7154 * (rgb >> 8 & 0xff) + 0.0721 * (rgb & 0xff)) / 255;
	}

	private static OptionalInt rgb(String paint, Style style) {
		String text = paint.strip().toLowerCase(Locale.ROOT);
		if (text.equals("currentcolor")) {
			String own = style.get("color", "black").strip().toLowerCase(Locale.ROOT);
			return own.equals("currentcolor") ? OptionalInt.of(0) : rgb(own, style);
		}
		if (text.startsWith("#")) {
			return digits(text);
		}
		if (text.endsWith(")") && (text.startsWith("rgb(") || text.startsWith("rgba("))) {
			return parts(text);
		}
		Integer named = NAMES.get(text);
		return named == null ? OptionalInt.empty() : OptionalInt.of(named);
	}

	/** Three or six digits; what may follow for the opacity counts for nothing. */
	private static OptionalInt digits(String text) {
		int digits = text.length() - 1;
		int rgb = 0;
		for (int i = 1; i <= digits; i++) {
			int digit = text.charAt(i) < 128 ? Character.digit(text.charAt(i), 16) : -1;
			if (digit < 0) {
				return OptionalInt.empty();
			}
			if (i <= 3 && digits <= 4) {
				rgb = rgb << 8 | 17 * digit;
			} else if (i <= 6 && digits > 4) {
				rgb = rgb << 4 | digit;
			}
		}
		return switch (digits) {
		case 3, 4, 6, 8 -> OptionalInt.of(rgb);
		default -> OptionalInt.empty();
		};
	}

	private static OptionalInt parts(String text) {
		double factor = text.contains("%") ? 2.55 : 1;
		List<Double> parts = Numbers.list(text.substring(text.indexOf('(') + 1, text.length() - 1).replace('%', ' '));
		if (parts.size() < 3) {
			return OptionalInt.empty();
		}
		int rgb = 0;
		for (double part : parts.subList(0, 3)) {
			rgb = rgb << 8 | (int) Math.round(Math.max(0, Math.min(255, part * factor)));
		}
		return OptionalInt.of(rgb);
	}
}
