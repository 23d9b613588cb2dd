package org.frisket.cli.sheets;

import java.util.Optional;

import org.frisket.cli.line.Conversions;
import org.frisket.material.sizes.PaperSize;

import picocli.CommandLine.ITypeConverter;

/** The sides of a sheet, such as {@code 12x12in}, or a size that has a name, such as {@code A4}, which stands upright. */
public final class SheetConversion implements ITypeConverter<Conversions.Box> {

	@Override
	public Conversions.Box convert(String text) {
		Optional<PaperSize> named = PaperSize.named(text);
		return named.isPresent()
				? new Conversions.Box(named.get().sheet().width().doubleValue(), named.get().sheet().height().doubleValue())
				: new Conversions.BoxConversion().convert(text);
	}
}
