package org.frisket.typography.internal.shape;

import static org.lwjgl.system.MemoryUtil.memAlloc;
import static org.lwjgl.system.MemoryUtil.memAllocInt;
import static org.lwjgl.system.MemoryUtil.memFree;
import static org.lwjgl.util.harfbuzz.HarfBuzz.*;

import java.lang.ref.Cleaner;
import java.lang.ref.Reference;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Outline;
import org.frisket.typography.face.AxisSettings;
import org.lwjgl.util.harfbuzz.hb_feature_t;
import org.lwjgl.util.harfbuzz.hb_glyph_info_t;
import org.lwjgl.util.harfbuzz.hb_glyph_position_t;
import org.lwjgl.util.harfbuzz.hb_variation_t;

/** A face in the hands of HarfBuzz; its memory is given back when this object is no longer used. */
public final class HarfBuzzEngine implements FontEngine {

	/** HarfBuzz counts in whole numbers; with 16 of them to the font unit, rounding stays below what matters. */
	private static final int STEPS_PER_UNIT = 16;
	private static final Cleaner CLEANER = Cleaner.create();

	private final long font;

	private HarfBuzzEngine(long font) {
		this.font = font;
		CLEANER.register(this, () -> hb_font_destroy(font));
	}

	/** Whether the native library can be loaded here. */
	public static boolean isAvailable() {
		return Availability.AVAILABLE;
	}

	private static final class Availability {

		static final boolean AVAILABLE = load();

		private static boolean load() {
			try {
				return hb_version_string() != null;
			} catch (LinkageError | RuntimeException absent) {
				// whatever the cause, there is the other engine
				return false;
			}
		}
	}

	/** @param bytes a font file that has been checked */
	public static HarfBuzzEngine open(byte[] bytes, int index, int unitsPerEm) {
		return open(bytes, index, unitsPerEm, AxisSettings.NONE);
	}

	/**
	 * @param bytes    a font file that has been checked
	 * @param settings of a variable font
	 */
	public static HarfBuzzEngine open(byte[] bytes, int index, int unitsPerEm, AxisSettings settings) {
		ByteBuffer copy = memAlloc(bytes.length);
		try {
			long blob = hb_blob_create(copy.put(bytes).flip(), HB_MEMORY_MODE_DUPLICATE, 0, null);
			long face = hb_face_create(blob, index);
			hb_blob_destroy(blob);
			hb_face_make_immutable(face);
			long font = hb_font_create(face);
			hb_face_destroy(face);
			hb_font_set_scale(font, STEPS_PER_UNIT * unitsPerEm, STEPS_PER_UNIT * unitsPerEm);
			if (!settings.isEmpty()) {
				vary(font, settings);
			}
			hb_font_make_immutable(font);
			return new HarfBuzzEngine(font);
		} finally {
			memFree(copy);
		}
	}

	private static void vary(long font, AxisSettings settings) {
		try (hb_variation_t.Buffer variations = hb_variation_t.calloc(settings.values().size())) {
			int i = 0;
			for (Map.Entry<String, Double> setting : settings.values().entrySet()) {
				variations.get(i++).tag(tag(setting.getKey())).value(setting.getValue().floatValue());
			}
			hb_font_set_variations(font, variations);
		}
	}

	private static int tag(String four) {
		return four.charAt(0) << 24 | four.charAt(1) << 16 | four.charAt(2) << 8 | four.charAt(3);
	}

	@Override
	public int glyph(int codePoint) {
		IntBuffer found = memAllocInt(1);
		try {
			return hb_font_get_nominal_glyph(font, codePoint, found) ? found.get(0) : 0;
		} finally {
			memFree(found);
			Reference.reachabilityFence(this);
		}
	}

	@Override
	public Outline outline(int glyph) {
		try {
			return HarfBuzzDrawing.draw(font, glyph, 1.0 / STEPS_PER_UNIT);
		} finally {
			Reference.reachabilityFence(this);
		}
	}

	@Override
	public double advance(int glyph) {
		try {
			return units(hb_font_get_glyph_h_advance(font, glyph));
		} finally {
			Reference.reachabilityFence(this);
		}
	}

	@Override
	public List<PlacedGlyph> shape(char[] text, Run run, Shaping shaping) {
		ByteBuffer utf16 = memAlloc(2 * text.length).order(ByteOrder.nativeOrder());
		utf16.asCharBuffer().put(text);
		long buffer = hb_buffer_create();
		try (hb_feature_t.Buffer features = features(shaping)) {
			hb_buffer_add_utf16(buffer, utf16, run.start(), run.limit() - run.start());
			hb_buffer_set_direction(buffer, shaping.vertical() ? HB_DIRECTION_TTB
					: run.rightToLeft() ? HB_DIRECTION_RTL : HB_DIRECTION_LTR);
			// never the language of whoever's machine this is: the same text is to come out the same at every desk
			hb_buffer_set_language(buffer,
					hb_language_from_string(shaping.language().isEmpty() ? "und" : shaping.language()));
			hb_buffer_guess_segment_properties(buffer);
			hb_shape(font, buffer, features);
			return glyphs(buffer);
		} finally {
			hb_buffer_destroy(buffer);
			memFree(utf16);
			Reference.reachabilityFence(this);
		}
	}

	private static hb_feature_t.Buffer features(Shaping shaping) {
		hb_feature_t.Buffer features = hb_feature_t.calloc(3 + shaping.features().values().size());
		int count = 0;
		if (!shaping.kerning()) {
			set(features.get(count++), "kern", 0);
		}
		if (!shaping.ligatures()) {
			set(features.get(count++), "liga", 0);
			set(features.get(count++), "clig", 0);
		}
		for (Map.Entry<String, Integer> feature : shaping.features().values().entrySet()) {
			set(features.get(count++), feature.getKey(), feature.getValue());
		}
		return features.limit(count);
	}

	private static void set(hb_feature_t feature, String tag, int value) {
		feature.tag(tag(tag)).value(value).start(HB_FEATURE_GLOBAL_START).end(HB_FEATURE_GLOBAL_END);
	}

	private static List<PlacedGlyph> glyphs(long buffer) {
		hb_glyph_info_t.Buffer infos = hb_buffer_get_glyph_infos(buffer);
		hb_glyph_position_t.Buffer positions = hb_buffer_get_glyph_positions(buffer);
		List<PlacedGlyph> glyphs = new ArrayList<>();
		long pen = 0;
		long down = 0;
		for (int i = 0; infos != null && positions != null && i < infos.capacity(); i++) {
			hb_glyph_position_t position = positions.get(i);
			glyphs.add(new PlacedGlyph(infos.get(i).codepoint(), infos.get(i).cluster(),
					units(pen + position.x_offset()), units(down - position.y_offset()),
					units(position.x_advance())));
			pen += position.x_advance();
			down -= position.y_advance();
		}
		return glyphs;
	}

	private static double units(long steps) {
		return (double) steps / STEPS_PER_UNIT;
	}
}
