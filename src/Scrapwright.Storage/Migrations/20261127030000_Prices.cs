using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Scrapwright.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Prices : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Jigs",
                table: "shop",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Prices",
                table: "shop",
                type: "TEXT",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Jigs",
                table: "shop");

            migrationBuilder.DropColumn(
                name: "Prices",
                table: "shop");
        }
    }
}
