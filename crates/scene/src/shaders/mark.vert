// A small flat sign that always faces the eye, six corners an instance.
uniform mat4 view_projection;
uniform vec2 size_px;
uniform float radius_px;
uniform float lift;
in vec3 place_m;
in float shape;
out vec2 at_px;
flat out float kind;
void main() {
    vec2 corner = vec2[6](vec2(-1, -1), vec2(1, -1), vec2(1, 1), vec2(-1, -1), vec2(1, 1), vec2(-1, 1))[gl_VertexID];
    vec4 middle = view_projection * vec4(place_m, 1.0);
    at_px = corner * (radius_px + 1.0);
    kind = shape;
    gl_Position = middle + vec4(at_px / size_px * 2.0 * middle.w, -lift * middle.w, 0.0);
}
