// A part's outer surface: soft light from over the left shoulder, an ink line
// where the surface turns away.
uniform vec3 eye_m;       // in the part's own place
uniform vec3 right;
uniform vec3 up;
uniform vec3 forward;
uniform vec4 plane;       // what lies beyond is sawn off
uniform vec3 colour;
uniform vec3 ground;
uniform vec3 ink;
uniform float dim;
uniform float ink_px;
// At the limb a triangle's middle may lie far off: only covered places count.
centroid in vec3 at_m;
in vec3 out_normal;
out vec4 out_colour;
void main() {
    if (dot(plane.xyz, at_m) - plane.w > -1e-5) discard;
    vec3 n = normalize(out_normal);
    vec3 to_eye = normalize(eye_m - at_m);
    float facing = dot(n, to_eye);
    if (facing < 0.0) { n = -n; facing = -facing; }
    vec3 light = normalize(-0.45 * right + 0.75 * up - 0.75 * forward);
    vec3 fill = normalize(0.7 * right - 0.2 * up - 0.6 * forward);
    float key = 0.5 + 0.5 * dot(n, light);
    float soft = 0.60 + 0.36 * key * key + 0.08 * max(dot(n, fill), 0.0);
    vec3 halfway = normalize(light + to_eye);
    float sheen = 0.07 * pow(max(dot(n, halfway), 0.0), 40.0);
    vec3 lit = colour * soft + sheen;
    lit = mix(lit, ground, dim);
    // Sliver triangles have wild derivatives.
    float width = clamp(fwidth(facing), 1e-5, 0.15);
    float edge = 1.0 - smoothstep(ink_px * width, (ink_px + 1.0) * width, facing);
    out_colour = vec4(mix(lit, ink, edge * (1.0 - 0.6 * dim)), 1.0);
}
