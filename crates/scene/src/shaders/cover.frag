// The ball's surface in classes of cover thickness, an ink line from class to
// class; light as on the parts, but flatter, so that the classes read.
uniform vec3 eye_m;
uniform vec3 right;
uniform vec3 up;
uniform vec3 forward;
uniform vec3 ink;
uniform float ink_px;
uniform float limits_m[8];
uniform vec3 colours[9];
in vec3 at_m;
in float thickness_m;
in float to_hole_m;
out vec4 out_colour;
void main() {
    vec3 n = normalize(at_m);
    vec3 to_eye = normalize(eye_m - at_m);
    float facing = max(dot(n, to_eye), 0.0);
    vec3 light = normalize(-0.45 * right + 0.75 * up - 0.75 * forward);
    float key = 0.5 + 0.5 * dot(n, light);
    float soft = 0.80 + 0.20 * key * key;
    // A cover just as thick as a limit belongs to the class above it, all over.
    float t = thickness_m + 1e-6;
    float slope = fwidth(t);
    vec3 colour = colours[0];
    float line = 0.0;
    for (int i = 0; i < 8; i++) {
        if (t >= limits_m[i]) colour = colours[i + 1];
        float off = abs(t - limits_m[i]);
        if (slope > 2e-7) line = max(line, 1.0 - smoothstep(ink_px * slope, (ink_px + 1.0) * slope, off));
    }
    vec3 lit = mix(colour * soft, ink, 0.8 * line);
    // Dark in a hole's opening, its rim as sharp as a line.
    float rim = max(fwidth(to_hole_m), 1e-7);
    lit = mix(ink, lit, smoothstep(-0.5 * rim, 0.5 * rim, to_hole_m));
    float width = clamp(fwidth(facing), 1e-5, 0.15);
    float edge = 1.0 - smoothstep(ink_px * width, (ink_px + 1.0) * width, facing);
    out_colour = vec4(mix(lit, ink, edge), 1.0);
}
