// A cut face: flat colour, hatched in the plane's own coordinates.
uniform vec3 colour;
uniform vec3 ground;
uniform vec3 hatch_ink;
uniform float dim;
uniform vec3 line_a;      // direction across the lines (x, y), spacing in metres (0: none)
uniform vec3 line_b;
uniform float dots;       // 1: dots where the lines cross
uniform float hatch_px;
in vec2 at_m;
out vec4 out_colour;
// Distance to the nearest line, in pixels; far away where there is none.
float off_px(vec3 set) {
    float across = dot(at_m, set.xy);
    float pixel = max(fwidth(across), 1e-9);
    if (set.z <= 0.0) return 1e3;
    return abs(across - set.z * floor(across / set.z + 0.5)) / pixel;
}
void main() {
    float a = off_px(line_a);
    float b = off_px(line_b);
    float off = dots > 0.5 ? length(vec2(a, b)) : min(a, b);
    float half_px = dots > 0.5 ? 1.5 * hatch_px : 0.5 * hatch_px;
    float hatch = 1.0 - smoothstep(half_px - 0.5, half_px + 0.5, off);
    vec3 flat_colour = mix(colour, ground, dim);
    out_colour = vec4(mix(flat_colour, hatch_ink, hatch * 0.6 * (1.0 - 0.7 * dim)), 1.0);
}
