package org.frisket.print.internal.drawn;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Base64;
import java.util.Optional;

import com.github.weisj.jsvg.parser.DomDocument;
import com.github.weisj.jsvg.parser.resources.RenderableResource;
import com.github.weisj.jsvg.parser.resources.ResourceLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.parser.resources.ResourceSupplier;
import com.github.weisj.jsvg.renderer.RenderContext;
import com.github.weisj.jsvg.renderer.output.Output;
import com.github.weisj.jsvg.view.FloatSize;

/** Pictures that an SVG keeps in itself, in base 64 (RFC 2397); nothing is fetched. Those that cannot be read are counted. */
public final class SvgImages implements ResourcePolicy, ResourceLoader {

	/** Of all pictures of a file together: with four bytes each, as much as one large picture takes. */
	private static final long MOST_PIXELS = 100_000_000;
	private static final String MARK = ";base64,";

	private final Decoder decoder;
	private long pixels;
	private int leftOut;

	/** Reads the file of a picture. */
	@FunctionalInterface
	public interface Decoder {

		/** @param most pixels that it may have @throws Exception if it cannot be read, or has more */
		BufferedImage decode(byte[] file, long most) throws Exception;
	}

	SvgImages(Decoder decoder) {
		this.decoder = decoder;
	}

	int leftOut() {
		return leftOut;
	}

	@Override
	public URI resolveResourceURI(URI base, String address) {
		String plain = address.strip();
		if (!plain.regionMatches(true, 0, "data:", 0, 5)) {
			return null;
		}
		try {
			return new URI(plain.replaceAll("\\s+", ""));
		} catch (URISyntaxException e) {
			leftOut++;
			return null;
		}
	}

	@Override
	public URI resolveResourceURI(URI base, URI address) {
		return resolveResourceURI(base, address.toString());
	}

	@Override
	public ResourceSupplier<RenderableResource> loadImage(DomDocument document, URI address) {
		Optional<RenderableResource> picture = picture(address.getSchemeSpecificPart());
		return platform -> picture;
	}

	private Optional<RenderableResource> picture(String content) {
		try {
			int at = content.indexOf(MARK);
			if (at >= 0) {
				BufferedImage image = decoder.decode(Base64.getDecoder().decode(content.substring(at + MARK.length())),
						MOST_PIXELS - pixels);
				pixels += (long) image.getWidth() * image.getHeight();
				return Optional.of(new Embedded(image));
			}
		} catch (Exception e) {
			// told as left out, whatever is wrong with it
		}
		leftOut++;
		return Optional.empty();
	}

	private record Embedded(BufferedImage image) implements RenderableResource {

		@Override
		public FloatSize intrinsicSize(RenderContext context) {
			return new FloatSize(image.getWidth(), image.getHeight());
		}

		@Override
		public void render(Output output, RenderContext context, AffineTransform place) {
			output.drawImage(image, place, null);
		}
	}
}
