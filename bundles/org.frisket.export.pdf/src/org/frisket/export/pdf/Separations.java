package org.frisket.export.pdf;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType2;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.frisket.page.Ink;

/** Colours that are inks of their own, with what stands in for them where nobody separates. */
final class Separations {

	private Separations() {
	}

	/** The full tone of a step's separation. */
	static PDColor of(Step step) {
		PDSeparation separation = new PDSeparation();
		separation.setColorantName(step.colorant());
		separation.setAlternateColorSpace(PDDeviceCMYK.INSTANCE);
		separation.setTintTransform(tint(cmyk(Ink.rgb(step.colour()))));
		return new PDColor(new float[] { 1 }, separation);
	}

	/** From no ink to the full tone: an exponential function with the exponent 1 (ISO 32000-1, 7.10.3). */
	private static PDFunctionType2 tint(float[] full) {
		COSDictionary function = new COSDictionary();
		function.setItem(COSName.FUNCTION_TYPE, COSInteger.TWO);
		function.setItem(COSName.DOMAIN, floats(0, 1));
		function.setItem(COSName.C0, floats(0, 0, 0, 0));
		function.setItem(COSName.C1, floats(full));
		function.setItem(COSName.N, COSInteger.ONE);
		return new PDFunctionType2(function);
	}

	private static COSArray floats(float... values) {
		COSArray array = new COSArray();
		for (float value : values) {
			array.add(new COSFloat(value));
		}
		array.setDirect(true);
		return array;
	}

	/** As much black as all three have in common. */
	private static float[] cmyk(float[] rgb) {
		float light = Math.max(rgb[0], Math.max(rgb[1], rgb[2]));
		if (light == 0) {
			return new float[] { 0, 0, 0, 1 };
		}
		return new float[] { rounded(1 - rgb[0] / light), rounded(1 - rgb[1] / light), rounded(1 - rgb[2] / light),
				rounded(1 - light) };
	}

	private static float rounded(float share) {
		return Math.round(share * 100) / 100f;
	}
}
