uniform vec4 plane;
uniform vec4 line_colour;
uniform float half_width_px;
uniform float dash_m;     // 0: solid
in vec3 at_m;
in float side_px;
in float along_m;
out vec4 out_colour;
void main() {
    if (dot(plane.xyz, at_m) - plane.w > 1e-4) discard;
    if (dash_m > 0.0 && fract(along_m / dash_m) > 0.6) discard;
    float cover = 1.0 - smoothstep(half_width_px - 0.5, half_width_px + 0.5, abs(side_px));
    out_colour = vec4(line_colour.rgb, line_colour.a * cover);
}
