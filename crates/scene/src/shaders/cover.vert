uniform mat4 view_projection;
in vec3 position;
in float thickness;
in float to_hole;
out vec3 at_m;
out float thickness_m;
out float to_hole_m;
void main() {
    at_m = position;
    thickness_m = thickness;
    to_hole_m = to_hole;
    gl_Position = view_projection * vec4(position, 1.0);
}
