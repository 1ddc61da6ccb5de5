uniform mat4 view_projection;
in vec3 position;
in float thickness;
in float open;
out vec3 at_m;
out float thickness_m;
out float opened;
void main() {
    at_m = position;
    thickness_m = thickness;
    opened = open;
    gl_Position = view_projection * vec4(position, 1.0);
}
