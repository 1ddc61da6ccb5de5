// A straight line of constant width on the screen.
uniform mat4 view_projection;
uniform vec3 offset_m;
uniform vec2 size_px;
uniform float width_px;
uniform float lift;       // towards the eye, in depth
in vec3 from_m;
in vec3 to_m;
in vec2 corner;           // along: 0 or 1; across: −1 or 1
out vec3 at_m;
out float side_px;
out float along_m;
void main() {
    vec4 a = view_projection * vec4(from_m + offset_m, 1.0);
    vec4 b = view_projection * vec4(to_m + offset_m, 1.0);
    vec2 pa = a.xy / a.w * size_px * 0.5;
    vec2 pb = b.xy / b.w * size_px * 0.5;
    vec2 d = pb - pa;
    d = dot(d, d) > 1e-12 ? normalize(d) : vec2(1, 0);
    float half_px = 0.5 * width_px + 0.75;
    vec2 shift = vec2(-d.y, d.x) * corner.y * half_px + d * (corner.x * 2.0 - 1.0) * 0.35 * width_px;
    vec4 end = corner.x < 0.5 ? a : b;
    at_m = corner.x < 0.5 ? from_m : to_m;
    along_m = corner.x * length(to_m - from_m);
    side_px = corner.y * half_px;
    gl_Position = end + vec4(shift / size_px * 2.0 * end.w, -lift * end.w, 0.0);
}
