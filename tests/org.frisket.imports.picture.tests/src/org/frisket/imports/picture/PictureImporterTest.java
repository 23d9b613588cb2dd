package org.frisket.imports.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.UnreadableArtException;
import org.frisket.testkit.RenderedArt;
import org.junit.jupiter.api.Test;

class PictureImporterTest {

	private static ImportedArt read(byte[] bytes, Map<String, String> options) throws Exception {
		PictureImporter importer = new PictureImporter();
		return importer.read(ImportSource.of("/desk/quay side.png", bytes), OptionValues.of(importer.options(), options),
				Monitor.NONE);
	}

	private static byte[] disc() throws Exception {
		return RenderedArt.disc().open().readAllBytes();
	}

	/** The same with a pHYs chunk behind its head (PNG, ISO/IEC 15948, 11.3.5.3): 11811 pixels a metre are 300 to the inch. */
	private static byte[] withPixelsPerMetre(byte[] png, int across, int down) throws Exception {
		byte[] chunk = ByteBuffer.allocate(13).put("pHYs".getBytes("US-ASCII")).putInt(across).putInt(down).put((byte) 1).array();
		CRC32 sum = new CRC32();
		sum.update(chunk);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		out.write(png, 0, 33);
		out.write(ByteBuffer.allocate(4).putInt(9).array());
		out.write(chunk);
		out.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
		out.write(png, 33, png.length - 33);
		return out.toByteArray();
	}

	@Test
	void pictureHasTheSizeThatItsFileSaysAndStaysAsItCame() throws Exception {
		byte[] bytes = withPixelsPerMetre(disc(), 11811, 23622);
		ImportedArt art = read(bytes, Map.of());
		ImportedShape.Picture picture = (ImportedShape.Picture) art.layers().get(0).shapes().get(0);
		assertEquals(400 / 11.811, picture.bounds().width(), 1e-9);
		assertEquals(300 / 23.622, picture.bounds().height(), 1e-9);
		assertEquals("quay side", picture.name());
		assertEquals("image/png", picture.mediaType());
		assertArrayEquals(bytes, picture.bytes());
		assertEquals(List.of(), art.guessed());
		assertEquals(List.of(), art.remarks());
	}

	@Test
	void oneThatDoesNotSayItsSizeIsAskedAbout() throws Exception {
		ImportedArt art = read(disc(), Map.of());
		assertEquals(List.of("resolution"), art.guessed());
		assertEquals(new Bounds(0, 0, 400 * 25.4 / 96, 300 * 25.4 / 96), art.bounds());
		assertEquals(2, art.remarks().size(), art.remarks().toString());
		ImportedArt told = read(disc(), Map.of("resolution", "300"));
		assertEquals(400 * 25.4 / 300, told.bounds().width(), 1e-9);
		assertEquals(List.of(), told.guessed());
		assertEquals(List.of(), told.remarks());
	}

	@Test
	void whatCannotBeReadIsToldWithItsFile() throws Exception {
		byte[] huge = disc();
		// width and height in the head (PNG, 11.2.2)
		ByteBuffer.wrap(huge).putInt(16, 20_000).putInt(20, 20_000);
		for (byte[] bytes : List.of(Arrays.copyOf(disc(), 200), new byte[0], "<svg".getBytes("US-ASCII"), huge)) {
			String message = assertThrows(UnreadableArtException.class, () -> read(bytes, Map.of())).getMessage();
			assertTrue(message.startsWith("/desk/quay side.png: "), message);
		}
	}
}
