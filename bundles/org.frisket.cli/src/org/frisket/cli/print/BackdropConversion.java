package org.frisket.cli.print;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.print.contour.Backdrop;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What lies behind the art: {@code auto}, {@code transparent} or a colour such as {@code #f4f0e6}. */
final class BackdropConversion implements ITypeConverter<BackdropConversion.Choice> {

	private static final Pattern COLOUR = Pattern.compile("#?([0-9a-fA-F]{6})");

	/** @param backdrop empty to be found */
	record Choice(Optional<Backdrop> backdrop) {
	}

	@Override
	public Choice convert(String text) {
		Matcher colour = COLOUR.matcher(text);
		if (colour.matches()) {
			return new Choice(Optional.of(Backdrop.colour(Integer.parseInt(colour.group(1), 16))));
		}
		return switch (text) {
		case "auto" -> new Choice(Optional.empty());
		case "transparent" -> new Choice(Optional.of(Backdrop.TRANSPARENT));
		default -> throw new TypeConversionException(
				"“" + text + "” is no background; write auto, transparent or a colour like #f4f0e6");
		};
	}
}
