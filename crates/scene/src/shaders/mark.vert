// A small flat sign that always faces the eye.
uniform mat4 view_projection;
uniform vec2 size_px;
uniform float radius_px;
in vec3 place_m;
in float shape;
in vec2 corner;
out vec2 at_px;
flat out float kind;
void main() {
    vec4 middle = view_projection * vec4(place_m, 1.0);
    at_px = corner * (radius_px + 1.0);
    kind = shape;
    gl_Position = middle + vec4(at_px / size_px * 2.0 * middle.w, 0.0, 0.0);
}
