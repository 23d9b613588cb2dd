package org.frisket.export.svg;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;

import org.frisket.geometry.Transform;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.PreparedPicture;
import org.junit.jupiter.api.Test;

class PlainDrawingTest {

	private static final String ROOT = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
			+ "width='20mm' height='10mm' viewBox='0 0 20 10'>";

	private static ImageBytes svg(String text) {
		return ImageBytes.of(text.getBytes(StandardCharsets.UTF_8));
	}

	private static boolean isPlain(String inside) {
		return PlainDrawing.isPlain(svg(ROOT + inside + "</svg>"), 2);
	}

	@Test
	void shapesAndColoursStayAsTheyAre() {
		assertTrue(isPlain("<g id='a'><path d='M0 0H5V5Z' fill='url(#b)'/></g><use xlink:href='#a'/>"));
		assertTrue(PictureLink.of(picture("<rect width='5' height='5'/>")).startsWith("data:image/svg+xml;base64,"));
	}

	@Test
	void whatRunsMovesOrLiesElsewhereIsDrawn() {
		for (String inside : new String[] { "<script>1</script>", "<rect onclick='x()'/>", "<text>Quay</text>",
				"<use href='quay.svg#a'/>", "<rect fill='url(http://192.0.2.1/a)'/>", "<style>rect{}</style>",
				"<rect style='fill:u\\72l(x)'/>", "<image href='data:image/png;base64,'/>", "<foreignObject/>",
				"<rect><animate attributeName='x'/></rect>", "<a href='#a'/>" }) {
			assertFalse(isPlain(inside), inside);
		}
		assertFalse(PlainDrawing.isPlain(svg(ROOT + "</svg>"), 1), "it would be stretched");
		assertTrue(PictureLink.of(picture("<text y='5'>Quay</text>")).startsWith("data:image/png;base64,"));
	}

	private static PreparedPicture picture(String inside) {
		return new PreparedPicture(svg(ROOT + inside + "</svg>"), Transform.scaling(20, 10));
	}
}
