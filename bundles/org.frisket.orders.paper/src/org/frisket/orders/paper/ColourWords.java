package org.frisket.orders.paper;

import java.util.Optional;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/**
 * Plain words for a colour, by its hue, lightness and saturation (HSL). The bounds between the words are our own; they
 * are for telling stacks of card apart, not for matching colours.
 */
public final class ColourWords {

	private static final Pattern CODE = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final double BLACK = 0.1;
	private static final double DARK = 0.3;
	private static final double LIGHT = 0.74;
	private static final double WHITE = 0.94;
	private static final double GREY = 0.12;
	/** Darker than this, orange is called brown. */
	private static final double BROWN = 0.42;

	private ColourWords() {
	}

	/** @param code {@code #rrggbb}. @return empty if it is none */
	public static Optional<String> of(String code) {
		return CODE.matcher(code).matches() ? Optional.of(of(Integer.parseInt(code.substring(1), 16))) : Optional.empty();
	}

	private static String of(int rgb) {
		double red = (rgb >> 16 & 0xff) / 255.0;
		double green = (rgb >> 8 & 0xff) / 255.0;
		double blue = (rgb & 0xff) / 255.0;
		double most = Math.max(red, Math.max(green, blue));
		double least = Math.min(red, Math.min(green, blue));
		double lightness = (most + least) / 2;
		double range = most - least;
		if (lightness < BLACK) {
			return Messages.ColourWords_black;
		}
		if (lightness > WHITE) {
			return Messages.ColourWords_white;
		}
		double saturation = range / (1 - Math.abs(2 * lightness - 1));
		if (saturation < GREY) {
			return shaded(lightness, Messages.ColourWords_grey);
		}
		double hue = most == red ? (green - blue) / range : most == green ? 2 + (blue - red) / range : 4 + (red - green) / range;
		return named((hue * 60 + 360) % 360, lightness);
	}

	private static String named(double hue, double lightness) {
		if (hue >= 15 && hue < 45 && lightness < BROWN) {
			return shaded(lightness, Messages.ColourWords_brown);
		}
		String name = hue < 15 || hue >= 345 ? Messages.ColourWords_red
				: hue < 45 ? Messages.ColourWords_orange
				: hue < 68 ? Messages.ColourWords_yellow
				: hue < 160 ? Messages.ColourWords_green
				: hue < 195 ? Messages.ColourWords_teal
				: hue < 255 ? Messages.ColourWords_blue
				: hue < 295 ? Messages.ColourWords_violet : Messages.ColourWords_pink;
		return shaded(lightness, name);
	}

	private static String shaded(double lightness, String name) {
		return lightness < DARK ? NLS.bind(Messages.ColourWords_dark, name)
				: lightness > LIGHT ? NLS.bind(Messages.ColourWords_light, name) : name;
	}
}
