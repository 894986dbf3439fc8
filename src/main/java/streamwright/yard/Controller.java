package streamwright.yard;

/** A controller on site. */
public record Controller(String id, ControllerModel model, Point at, int firstChannel, int firstUniverse) {}
