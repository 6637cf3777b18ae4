package soundings.chart;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What {@link Graphics2D} asks of a canvas that has neither pixels nor words: colour, stroke and transform, nothing else. */
abstract class BlankCanvas extends Graphics2D {
    private static final FontRenderContext FONTS = new FontRenderContext(null, true, true);
    private Color colour = Color.BLACK;
    private Stroke stroke = new BasicStroke();
    private AffineTransform transform = new AffineTransform();
    private @Nullable Font font;
    private @Nullable Shape clip;

    @Override
    public Color getColor() {
        return colour;
    }

    @Override
    public void setColor(Color c) {
        colour = c;
    }

    @Override
    public Paint getPaint() {
        return colour;
    }

    @Override
    public void setPaint(Paint paint) {
        colour = paint instanceof Color plain ? plain : colour;
    }

    @Override
    public Stroke getStroke() {
        return stroke;
    }

    @Override
    public void setStroke(Stroke s) {
        stroke = s;
    }

    @Override
    public AffineTransform getTransform() {
        return new AffineTransform(transform);
    }

    @Override
    public void setTransform(AffineTransform t) {
        transform = new AffineTransform(t);
    }

    @Override
    public void transform(AffineTransform t) {
        transform.concatenate(t);
    }

    @Override
    public void translate(int x, int y) {
        transform.translate(x, y);
    }

    @Override
    public void translate(double x, double y) {
        transform.translate(x, y);
    }

    @Override
    public void rotate(double theta) {
        transform.rotate(theta);
    }

    @Override
    public void rotate(double theta, double x, double y) {
        transform.rotate(theta, x, y);
    }

    @Override
    public void scale(double x, double y) {
        transform.scale(x, y);
    }

    @Override
    public void shear(double x, double y) {
        transform.shear(x, y);
    }

    @Override
    public @Nullable Font getFont() {
        return font;
    }

    @Override
    public void setFont(Font f) {
        font = f;
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return FONTS;
    }

    @Override
    public FontMetrics getFontMetrics(Font f) {
        throw new UnsupportedOperationException("no words on this canvas");
    }

    @Override
    public @Nullable Shape getClip() {
        return clip;
    }

    @Override
    public void setClip(@Nullable Shape s) {
        clip = s;
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        clip = new Rectangle(x, y, width, height);
    }

    @Override
    public void clip(Shape s) {}

    @Override
    public void clipRect(int x, int y, int width, int height) {}

    @Override
    public Rectangle getClipBounds() {
        return new Rectangle(0, 0, 10_000, 10_000);
    }

    @Override
    public Graphics create() {
        return this;
    }

    @Override
    public void dispose() {}

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle(x, y, width, height));
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {}

    @Override
    public Composite getComposite() {
        return AlphaComposite.SrcOver;
    }

    @Override
    public void setComposite(Composite comp) {}

    @Override
    public Color getBackground() {
        return Color.WHITE;
    }

    @Override
    public void setBackground(Color color) {}

    @Override
    public RenderingHints getRenderingHints() {
        return new RenderingHints(Map.of());
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, @Nullable Object value) {}

    @Override
    public @Nullable Object getRenderingHint(RenderingHints.Key key) {
        return null;
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {}

    @Override
    public void addRenderingHints(Map<?, ?> hints) {}

    @Override
    public void setPaintMode() {}

    @Override
    public void setXORMode(Color c) {}

    @Override
    public boolean hit(Rectangle rect, Shape s, boolean onStroke) {
        return false;
    }

    @Override
    public @Nullable GraphicsConfiguration getDeviceConfiguration() {
        return null;
    }

    @Override
    public void drawString(String text, int x, int y) {}

    @Override
    public void drawString(String text, float x, float y) {}

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {}

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {}

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {}

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {}

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {}

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {}

    @Override
    public void drawOval(int x, int y, int width, int height) {}

    @Override
    public void fillOval(int x, int y, int width, int height) {}

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int angle) {}

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int angle) {}

    @Override
    public void drawPolyline(int[] x, int[] y, int n) {}

    @Override
    public void drawPolygon(int[] x, int[] y, int n) {}

    @Override
    public void fillPolygon(int[] x, int[] y, int n) {}

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp op, int x, int y) {}

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform t) {}

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform t) {}

    @Override
    public boolean drawImage(Image image, AffineTransform t, ImageObserver o) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver o) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver o) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color c, ImageObserver o) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, Color c, ImageObserver o) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int a, int b, int c, int d, int e, int f, int g, int h, ImageObserver o) {
        return true;
    }

    @Override
    public boolean drawImage(
            Image image, int a, int b, int c, int d, int e, int f, int g, int h, Color colour, ImageObserver o) {
        return true;
    }
}
