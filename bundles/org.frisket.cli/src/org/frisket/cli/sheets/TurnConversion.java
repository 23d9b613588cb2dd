package org.frisket.cli.sheets;

import org.frisket.impose.Turning;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** {@code none}, {@code 180}, {@code 90} or {@code free}. */
final class TurnConversion implements ITypeConverter<Turning> {

	@Override
	public Turning convert(String text) {
		return switch (text) {
		case "none" -> Turning.NONE;
		case "180" -> Turning.HALF;
		case "90" -> Turning.QUARTER;
		case "free" -> Turning.FREE;
		default -> throw new TypeConversionException("“" + text + "” is no turn; there are none, 180, 90, free");
		};
	}
}
