using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Scrapwright.Storage.Migrations
{
    /// <inheritdoc />
    public partial class WorkHours : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Hours",
                table: "shop",
                type: "TEXT",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Hours",
                table: "shop");
        }
    }
}
